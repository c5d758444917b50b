import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { placeText } from '../../src/record/place.ts';
import { SMALL } from './small.ts';

const ENTRY = 'log/2025-03-04.md';
let around: string;

beforeAll(async () => {
  around = await mkdtemp(join(tmpdir(), 'ashframe-hostile-'));
});
afterAll(() => rm(around, { recursive: true, force: true }));

let count = 0;
/** The small record on the disk, with more files. */
async function write(more: Record<string, string | Uint8Array>): Promise<string> {
  const folder = join(around, `record-${++count}`);
  for (const [name, text] of Object.entries({ ...SMALL, ...more })) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), text);
  }
  return folder;
}

/** What opening the small record with one more file says. The other day of it is read all the same. */
const openWith = async (file: string, content: string | Uint8Array) => said(await write({ [file]: content }));

async function said(folder: string): Promise<string[]> {
  const { problems, record } = await openFolder(folder, '2025-12-31');
  expect(record?.entries.some(({ day }) => day === '2025-03-03')).toBe(true);
  return problems.map(({ place, reason }) => `${placeText(place)} ${reason}`);
}

describe('a folder with a hostile file', () => {
  it.each(['js', 'javascript', 'coffee', 'json', 'toml'])(
    'runs nothing that is opened with ---%s',
    async (language) => {
      const ran = join(around, `ran-${language}`);
      const code = `process.getBuiltinModule('node:fs').writeFileSync(${JSON.stringify(ran)}, 'ran')`;
      expect(await openWith(ENTRY, `---${language}\n{ "by": ${code} }\n---\n\nStripped.\n`)).toEqual([
        `${ENTRY}:1:1 Front matter opened with \`---${language}\` isn’t read: only YAML is, and nothing in a log is ever run.`,
      ]);
      expect(existsSync(ran)).toBe(false);
    },
  );

  it('doesn’t unfold values that stand for values that stand for values', async () => {
    const tenfold = 'abcdefghi'.split('').map((name, i, all) => {
      const inner = i === 0 ? '"x"' : `*${all[i - 1]}`;
      return `${name}: &${name} [${Array(10).fill(inner).join(', ')}]`;
    });
    const before = performance.now();
    const found = await openWith(ENTRY, `---\nshop-only: quote higher\n${tenfold.join('\n')}\n---\n`);
    expect(performance.now() - before).toBeLessThan(2000);
    expect(found).toEqual([`${ENTRY}:4:8 Unexpected \`*a\`: a value can’t stand in for another here.`]);
  });

  it('leaves a day of 5 MB unread', async () => {
    expect(await openWith(ENTRY, 'Stripped the cowl.\n'.repeat(263_158))).toEqual([
      `${ENTRY}:1:1 \`${ENTRY}\` is 5.0 MB: too large for a day’s words, so it isn’t read.`,
    ]);
  });

  it('finds a NUL byte where it stands', async () => {
    expect(await openWith(ENTRY, '---\nby: tobias\n---\n\nStrip\0ped.\n')).toEqual([
      `${ENTRY}:5:6 \`${ENTRY}\` holds a NUL byte, which no text has.`,
    ]);
  });

  it('says when a text isn’t UTF-8', async () => {
    // 0xE9 is é in Latin-1 and begins no character of UTF-8 before a full stop.
    expect(await openWith(ENTRY, Uint8Array.from([0x43, 0x6f, 0x75, 0x70, 0xe9, 0x2e, 0x0a]))).toEqual([
      `${ENTRY}:1:1 \`${ENTRY}\` isn’t UTF-8 text.`,
    ]);
  });

  it('doesn’t follow a link out of the folder, be it a file or a folder', async () => {
    await writeFile(join(around, 'secret.md'), '---\nby: tobias\n---\n');
    await mkdir(join(around, 'elsewhere'), { recursive: true });
    const linked = await write({});
    await symlink(join(around, 'secret.md'), join(linked, ENTRY));
    await symlink(join(around, 'elsewhere'), join(linked, 'choices'));
    expect(await said(linked)).toEqual([
      'choices:1:1 `choices` is a link that leads out of the record’s folder, so it isn’t read.',
      `${ENTRY}:1:1 \`${ENTRY}\` is a link that leads out of the record’s folder, so it isn’t read.`,
    ]);
  });

  it('takes no picture from outside photos/', async () => {
    await writeFile(join(around, 'secret'), 'words');
    const found = await openWith(ENTRY, '---\nphotos:\n  - { file: ../../secret }\n---\n');
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(new RegExp(`^${ENTRY}:3:13 .*\`\\.\\./\\.\\./secret\``));
  });
});
