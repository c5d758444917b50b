import { spawn } from 'node:child_process';
import { chmod, mkdir, readdir, readFile, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, it } from 'vitest';
import { replaceText } from '../../src/disk/replace-text.ts';
import { emptyFolder } from '../commands/run.ts';
import { said } from './said.ts';

describe('a text in place of another', () => {
  it('is written over what was read, and keeps who may read it', async () => {
    const path = join(await emptyFolder(), 'log/2025-04-16.md');
    expect(await replaceText(path, undefined, 'Words.\n')).toBe('written');
    await chmod(path, 0o640);
    expect(await replaceText(path, 'Words.\n', 'Other words.\n')).toBe('written');
    expect(await readFile(path, 'utf8')).toBe('Other words.\n');
    expect((await stat(path)).mode & 0o777).toBe(0o640);
    expect(await readdir(join(path, '..'))).toEqual(['2025-04-16.md']);
  });

  it('isn’t written over what somebody wrote since', async () => {
    const path = join(await emptyFolder(), 'day.md');
    await writeFile(path, 'Theirs.\n');
    expect(await replaceText(path, 'Mine.\n', 'Other words.\n')).toBe('changed');
    expect(await replaceText(path, undefined, 'Other words.\n')).toBe('changed');
    expect(await replaceText(`${path}x`, 'Mine.\n', 'Other words.\n')).toBe('changed');
    expect(await readFile(path, 'utf8')).toBe('Theirs.\n');
    expect(await readdir(join(path, '..'))).toEqual(['day.md']);
  });

  it('takes away what a killed writer left beside it', async () => {
    const path = join(await emptyFolder(), 'day.md');
    const beside = join(path, '../.day.md.writing');
    await writeFile(beside, 'Half');
    const longAgo = new Date('2025-04-16T12:00:00Z');
    await utimes(beside, longAgo, longAgo);
    expect(await replaceText(path, undefined, 'Words.\n')).toBe('written');
    expect(await readdir(join(path, '..'))).toEqual(['day.md']);
  });

  it('leaves nothing behind where it can’t be put', async () => {
    const folder = await emptyFolder();
    await mkdir(join(folder, 'taken'));
    await expect(replaceText(join(folder, 'taken'), undefined, 'Words.\n')).rejects.toThrow();
    expect(await readdir(folder)).toEqual(['taken']);
  });
});

/** A process that runs some lines of code; `argv` from 1 on are its words. */
function apart(code: string, words: readonly string[]) {
  const running = spawn(process.execPath, ['--input-type=module', '-e', code, ...words], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<string | null>((done) => running.on('close', (_, signal) => done(signal)));
  return { running, ended };
}

/** Adds a line to a file again and again, each time to what it read. */
const ADDING = `
import { readFile } from 'node:fs/promises';
import { replaceText } from './src/disk/replace-text.ts';
const [path, who, count] = process.argv.slice(1);
for (let n = 0; n < Number(count); n++) {
  for (;;) {
    const before = await readFile(path, 'utf8');
    if ((await replaceText(path, before, before + who + ' ' + n + '\\n')) === 'written') break;
  }
}
`;

it('four writers at once lose nothing of each other', async () => {
  const path = join(await emptyFolder(), 'day.md');
  await writeFile(path, '');
  const writers = ['a', 'b', 'c', 'd'];
  await Promise.all(writers.map((who) => apart(ADDING, [path, who, '25']).ended));
  const lines = (await readFile(path, 'utf8')).trim().split('\n');
  const wanted = writers.flatMap((who) => Array.from({ length: 25 }, (_, n) => `${who} ${n}`));
  expect(lines.toSorted()).toEqual(wanted.toSorted());
}, 60_000);

/** Writes two texts of a megabyte in turn, without an end, and says a byte after each time. */
const WRITING = `
import { writeSync } from 'node:fs';
import { replaceText } from './src/disk/replace-text.ts';
const [path, old, fresh] = process.argv.slice(1);
for (;;) {
  writeSync(1, '.');
  await replaceText(path, old.repeat(1e5), fresh.repeat(1e5));
  writeSync(1, '.');
  await replaceText(path, fresh.repeat(1e5), old.repeat(1e5));
}
`;

it('killed fifty times while it is written, a file is the old one or the new one', async () => {
  const path = join(await emptyFolder(), 'day.md');
  const [old, fresh] = ['old words\n', 'new words\n'];
  await writeFile(path, old.repeat(1e5));
  const chance = xoroshiro128plus(1934);
  const found = new Set<string>();
  for (let kill = 0; kill < 50; kill++) {
    const { running, ended } = apart(WRITING, [path, old, fresh]);
    // However slow the disk: after some of its writes, and somewhere within the next.
    await said(running, 1 + Math.floor(uniformFloat64(chance) * 4));
    await new Promise((later) => setTimeout(later, uniformFloat64(chance) * 25));
    running.kill('SIGKILL');
    expect(await ended).toBe('SIGKILL');
    const text = await readFile(path, 'utf8');
    expect(text === old.repeat(1e5) || text === fresh.repeat(1e5), `after kill ${kill}`).toBe(true);
    found.add(text.slice(0, 3));
    // The next one needn't wait for the one that was killed.
    const longAgo = new Date('2025-04-16T12:00:00Z');
    await utimes(join(path, '../.day.md.writing'), longAgo, longAgo).catch(() => undefined);
  }
  expect([...found].sort()).toEqual(['new', 'old']);
}, 180_000);
