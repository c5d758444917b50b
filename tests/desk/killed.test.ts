import { spawn } from 'node:child_process';
import { readdir, readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, it } from 'vitest';
import { said } from '../disk/said.ts';
import { smallFolder } from './at-desk.ts';

const FILE = 'log/2025-03-04.md';
const TEXTS = ['old words\n', 'new words\n'].map((words) => words.repeat(3000)) as [string, string];

/** The whole desk: it looks at a form and writes what it saw, one text and the other in turn, without an end. */
const DESK = `
import { writeSync } from 'node:fs';
import { recordAt } from './src/desk/lying.ts';
import { looked } from './src/desk/looked.ts';
import { toldOf } from './src/desk/told.ts';
import { written } from './src/desk/written.ts';
const [root, ...words] = process.argv.slice(1);
const texts = words.map((one) => one.repeat(3000));
const at = recordAt(root);
for (let n = 0; ; n++) {
  const { entry, read, by } = await toldOf(at, '2025-03-04');
  const form = { entry, read, by, lists: {}, words: texts[n % 2] };
  const { told } = await looked(at, form);
  if (n > 0) writeSync(1, '.');
  const done = await written(at, form, told.sign);
  // The text that comes first may be what stands there.
  if (!('said' in done) && n > 0) throw new Error(done.refused);
}
`;

/** Only the step in which anything the desk writes gets to the disk: it starts in a tenth of the time. */
const LAST_STEP = `
import { writeSync } from 'node:fs';
import { replaceText } from './src/disk/replace-text.ts';
const [root, ...words] = process.argv.slice(1);
const texts = words.map((one) => one.repeat(3000));
for (let n = 0; ; n++) {
  if (n > 0) writeSync(1, '.');
  const done = await replaceText(root + '/${FILE}', texts[(n + 1) % 2], texts[n % 2]);
  // Where the one before was killed in turns, the other text stands.
  if (done !== 'written' && n > 0) throw new Error(done);
}
`;

/** Kills a writer so many times, each at another moment, and gives which texts were found. */
async function killed(script: string, kills: number, longest: number): Promise<string[]> {
  const folder = await smallFolder();
  const path = join(folder, FILE);
  await writeFile(path, TEXTS[1]);
  const chance = xoroshiro128plus(1934);
  const found = new Set<string>();
  for (let kill = 0; kill < kills; kill++) {
    const words = ['old words\n', 'new words\n'];
    const running = spawn(process.execPath, ['--input-type=module', '-e', script, folder, ...words], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const ended = new Promise((done) => running.on('close', (_, signal) => done(signal)));
    // However slow the disk: after some of its writes, and somewhere within the next.
    await Promise.race([said(running, 1 + Math.floor(uniformFloat64(chance) * 4)), ended]);
    await new Promise((later) => setTimeout(later, uniformFloat64(chance) * longest));
    running.kill('SIGKILL');
    expect(await ended).toBe('SIGKILL');
    const text = await readFile(path, 'utf8');
    expect(TEXTS.includes(text), `after kill ${kill}`).toBe(true);
    found.add(text.slice(0, 3));
    // What the writer held lies beside under a name that no reader takes for an entry; the next one needn’t wait for it.
    const names = (await readdir(join(folder, 'log'))).filter((name) => name.endsWith('.md'));
    expect(names).toEqual(['2025-03-03.md', '2025-03-04.md']);
    const longAgo = new Date('2025-04-16T12:00:00Z');
    await utimes(join(folder, 'log/.2025-03-04.md.writing'), longAgo, longAgo).catch(() => undefined);
  }
  return [...found].sort();
}

describe('an entry is the old one or the new one', () => {
  it('when what writes it is killed fifty times', async () => {
    expect(await killed(LAST_STEP, 50, 40)).toEqual(['new', 'old']);
  });

  it('when the whole desk is killed while it writes', async () => {
    await killed(DESK, 2, 40);
  });
});

it('that step is the only one by which the desk writes into a record’s texts', async () => {
  const files = (await readdir('src/desk')).filter((name) => name.endsWith('.ts'));
  const writes = async (what: RegExp) => {
    const texts = await Promise.all(files.map((name) => readFile(join('src/desk', name), 'utf8')));
    return files.filter((_, n) => what.test(texts[n] ?? ''));
  };
  expect(await writes(/\breplaceText\(/)).toEqual(['written.ts']);
  // A draft lies outside of what is read as a record, and pictures are no texts.
  expect(
    await writes(/\b(?:writeText|writeFile|writeNewText|appendFile|rename|createWriteStream)\(/),
  ).toEqual(['body.ts', 'draft.ts']);
});
