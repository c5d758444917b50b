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

describe('hledger’s balance of the owner', () => {
  it('is that of each statement of the demo on its last day, to the cent, for every month', async (context) => {
    if (!installed) context.skip(WHY_NOT);
    const folder = await demoCopy();
    for (const [to, on] of [
      ['2025-10-31', '2025-11-03'],
      ['2025-11-30', '2025-12-02'],
    ] as const) {
      expect((await npmRun('statement', ['--issue', '--to', to, '--on', on], folder)).err).toBe('');
    }
    const { out } = await npmRun('journal', [], folder);
    const { record } = await openFolder(folder);
    const statements = record?.statements ?? [];
    expect(statements.map(({ to }) => monthOf(to))).toEqual(
      Array.from({ length: 10 }, (_, i) => `2025-${String(i + 2).padStart(2, '0')}`),
    );
    const asked = ['balance', '--historical', '--monthly', '--no-total', '-O', 'csv', '^balance:owner$'];
    const found = await reported(out, asked);
    // Three of them correct an earlier one, which stays as it was.
    expect(statements.filter(({ corrections = [] }) => corrections.length > 0)).toHaveLength(3);
    for (const { to, balance } of statements) {
      expect([to, -(found.get(`balance:owner ${monthOf(to)}`) ?? Number.NaN)]).toEqual([to, balance]);
    }
  });

  it('waits with what was changed since for the statement that says so', async (context) => {
    if (!installed) context.skip(WHY_NOT);
    const { record } = await openFolder('content');
    if (!record) throw new Error('the demo record can’t be opened');
    const found = await reported(journalText(rollUp(record), record), [
      ...['balance', '--historical', '--monthly', '--no-total', '-O', 'csv', '^balance:unstated$'],
    ]);
    // 4 h at 55.00, materials at 3.50 an hour and 7% of them: 220.00 + 14.00 + 0.98
    expect(found.get('balance:unstated 2025-04')).toBe(-23498);
    expect(found.get('balance:unstated 2025-05') ?? 0).toBe(0);
    expect([...found.values()].at(-1)).toBe(0);
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
function byAccountAndMonth(journal: string): Promise<Map<string, number>> {
  return reported(journal, ['balance', '--monthly', '--no-total', '-O', 'csv', '^cost:', '^charged:']);
}

/** Minor units by account and by the month of each column. */
async function reported(journal: string, words: readonly string[]): Promise<Map<string, number>> {
  const folder = await mkdtemp(join(tmpdir(), 'ledger-'));
  try {
    const file = join(folder, 'record.journal');
    await writeFile(file, journal);
    const { stdout } = await run('hledger', ['-f', file, ...words], {
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
