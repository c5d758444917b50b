// The demo's sums against an independent program: hledger adds up the printed ledger by account and month.
import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { monthOf } from '../../src/figures/days.ts';
import type { CarRecord } from '../../src/record/record.ts';
import type { Rollup } from '../../src/rollup/cost-lines.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { accountOf, journalText } from '../../src/views/journal.ts';
import { demoCopy, npmRun } from '../commands/run.ts';
import { recordOf } from '../rollup/records.ts';

const run = promisify(execFile);
const WHY_NOT = 'NOT RUN: hledger is not installed here, so nothing independent added the sums up';
const installed = await run('hledger', ['--version']).then(
  () => true,
  () => false,
);

describe('hledger adds up the printed ledger', () => {
  let record: CarRecord;
  let rollup: Rollup;
  beforeAll(async () => {
    const opened = await openFolder('content');
    if (!opened.record) throw new Error('the demo record can’t be opened');
    record = opened.record;
    rollup = rollUp(record);
  });

  it('to the cent, by account and month', async (context) => {
    if (!installed) context.skip(WHY_NOT);
    const found = await byAccountAndMonth(journalText(rollup, record));
    const ours = new Map<string, number>();
    for (const line of rollup.lines) {
      for (const side of ['cost', 'charged'] as const) {
        const name = `${accountOf(side, line)} ${monthOf(line.day)}`;
        ours.set(name, (ours.get(name) ?? 0) + line[side]);
      }
    }
    expect(ours.size).toBeGreaterThan(300);
    expect(sorted(found)).toEqual(sorted(ours));
  });

  it('to the same totals, both of what it cost and of what was charged', async (context) => {
    if (!installed) context.skip(WHY_NOT);
    const found = await byAccountAndMonth(journalText(rollup, record));
    const all = (side: string) =>
      [...found].filter(([name]) => name.startsWith(side)).reduce((sum, [, amount]) => sum + amount, 0);
    expect([all('cost:'), all('charged:')]).toEqual([rollup.total.cost, rollup.total.charged]);
  });

  it('reads words that look like its own syntax as words', async (context) => {
    if (!installed) context.skip(WHY_NOT);
    const log = `---
hours:
  - { part: cowl, work: metal, time: 2h, note: "date:2031-01-01 [2032-02-02] ; | tag: x" }
---
`;
    const odd = recordOf({ 'log/2025-03-03.md': log });
    expect([...(await byAccountAndMonth(journalText(rollUp(odd), odd)))]).toEqual([
      ['charged:labour:cowl 2025-03', 17000],
    ]);
  });
});

describe('npm run journal', () => {
  it('prints the ledger of the record', async () => {
    const { record } = await openFolder('content');
    if (!record) throw new Error('the demo record can’t be opened');
    expect(await npmRun('journal')).toEqual({ code: 0, out: journalText(rollUp(record), record), err: '' });
  });

  it('prints no sums of a record with errors, and says what they are', async () => {
    const folder = await demoCopy();
    await rm(join(folder, 'shop.md'));
    const { code, out, err } = await npmRun('journal', [], folder);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('`shop.md` is missing.');
  });

  it('says how it is used', async () => {
    const { code, err } = await npmRun('journal', ['content', 'content']);
    expect([code, err]).toEqual([2, expect.stringContaining('Use: npm run')]);
  });
});

/** Minor units of a currency of two digits, by account and month, as hledger reports them. */
async function byAccountAndMonth(journal: string): Promise<Map<string, number>> {
  const folder = await mkdtemp(join(tmpdir(), 'ledger-'));
  try {
    const file = join(folder, 'record.journal');
    await writeFile(file, journal);
    const asked = ['-f', file, 'balance', '--monthly', '--no-total', '-O', 'csv', '^cost:', '^charged:'];
    const { stdout } = await run('hledger', asked, {
      maxBuffer: 1e8,
      env: { ...process.env, LC_ALL: 'C.UTF-8' },
    });
    const [head = [], ...rows] = stdout.trim().split('\n').map(cells);
    return new Map(
      rows.flatMap(([account, ...amounts]) =>
        amounts.map((amount, i) => [`${account} ${head[i + 1]}`, cents(amount)] as const),
      ),
    );
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** No cell of this report holds a comma or a quote. */
function cells(row: string): string[] {
  return row.split(',').map((cell) => cell.replace(/^"|"$/g, ''));
}

function cents(amount: string): number {
  const [, sign = '', whole = '', part = ''] = /^(-?)(\d+)(?:\.(\d{2}))?(?: USD)?$/.exec(amount) ?? [];
  if (whole === '') throw new Error(`hledger gave \`${amount}\``);
  return Number(`${sign}${whole}${part || '00'}`) + 0;
}

/** Accounts and months with an amount, by name. */
function sorted(sums: Map<string, number>): [string, number][] {
  return [...sums].filter(([, amount]) => amount !== 0).sort(([a], [b]) => (a < b ? -1 : 1));
}
