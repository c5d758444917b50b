import { spawn } from 'node:child_process';
import { readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { expect, it } from 'vitest';
import { smallFolder } from './at-desk.ts';

const FILE = 'log/2025-03-04.md';

/** Writes one text and the other in turn as the desk does, without an end. */
const WRITING = `
import { recordAt } from './src/desk/lying.ts';
import { looked } from './src/desk/looked.ts';
import { toldOf } from './src/desk/told.ts';
import { written } from './src/desk/written.ts';
const [root, ...texts] = process.argv.slice(1);
const at = recordAt(root);
for (let n = 0; ; n++) {
  const { entry, read, by } = await toldOf(at, '2025-03-04');
  const form = { entry, read, by, lists: {}, words: texts[n % 2] };
  const { told } = await looked(at, form);
  if (n === 1) console.log('begun');
  await written(at, form, told.sign);
}
`;

it('killed fifty times while the desk writes, an entry is the old one or the new one', async () => {
  const folder = await smallFolder();
  const path = join(folder, FILE);
  const texts = ['old words\n', 'new words\n'].map((words) => words.repeat(300));
  await writeFile(path, texts[1] ?? '');
  const chance = xoroshiro128plus(1934);
  const found = new Set<string>();
  for (let kill = 0; kill < 50; kill++) {
    const running = spawn(process.execPath, ['--input-type=module', '-e', WRITING, folder, ...texts], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const ended = new Promise((done) => running.on('close', (_, signal) => done(signal)));
    await new Promise((begun) => running.stdout.once('data', begun));
    await new Promise((later) => setTimeout(later, uniformFloat64(chance) * 40));
    running.kill('SIGKILL');
    expect(await ended).toBe('SIGKILL');
    const text = await readFile(path, 'utf8');
    expect(texts.includes(text), `after kill ${kill}`).toBe(true);
    found.add(text.slice(0, 3));
    // The next one needn’t wait for the one that was killed.
    const longAgo = new Date('2025-04-16T12:00:00Z');
    await utimes(join(folder, 'log/.2025-03-04.md.writing'), longAgo, longAgo).catch(() => undefined);
  }
  expect([...found].sort()).toEqual(['new', 'old']);
}, 240_000);
