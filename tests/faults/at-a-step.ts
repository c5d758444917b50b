// Loaded before a command (`node --import`): counts the steps by which it changes the disk, and stops it dead at one of
// them, as `kill -9` would, half of what was to be written written. Or takes a file away at one of the times when the
// command turns to it.
import fs from 'node:fs';
import fsp, { type FileHandle } from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';

const { KILL_AT, COUNT_INTO, VANISHING, VANISHES_AT } = process.env;
const { writeFileSync, appendFileSync, unlinkSync } = fs;
let steps = 0;
let turns = 0;

type Work = (...words: never[]) => unknown;

/** Counts a step; at the one that was named the process is gone, after what is done of it by then. */
function step(half: () => void = () => undefined): void {
  steps += 1;
  if (steps !== Number(KILL_AT)) return;
  half();
  process.kill(process.pid, 'SIGKILL');
}

/** The first half of a text or of bytes; nothing of what comes as a stream. */
function halfOf(data: unknown): string | Uint8Array {
  return typeof data === 'string' || data instanceof Uint8Array ? data.slice(0, data.length / 2) : '';
}

function replace<T extends object>(of: T, name: keyof T & string, by: (real: Work) => Work): void {
  const real = of[name] as Work;
  Object.assign(of, { [name]: by(real.bind(of)) });
}

for (const name of ['rename', 'rm', 'link', 'copyFile', 'mkdir', 'cp', 'utimes', 'chmod'] as const) {
  replace(fsp, name, (real) => (...words) => {
    step();
    return real(...words);
  });
}
replace(fsp, 'writeFile', (real) => (...words) => {
  const [path, data] = words as unknown as [string, unknown];
  step(() => writeFileSync(path, halfOf(data)));
  return real(...words);
});
replace(fsp, 'appendFile', (real) => (...words) => {
  const [path, data] = words as unknown as [string, unknown];
  step(() => appendFileSync(path, halfOf(data)));
  return real(...words);
});
replace(fsp, 'open', (real) => async (...words) => {
  const [path, flags = 'r'] = words as unknown as [string, string | undefined];
  if (flags === 'r') return real(...words);
  step();
  const file = (await real(...words)) as FileHandle;
  replace(file, 'writeFile', (write) => (...what) => {
    step(() => writeFileSync(path, halfOf(what[0])));
    return write(...what);
  });
  return file;
});
for (const name of ['mkdirSync', 'linkSync', 'renameSync', 'rmSync'] as const) {
  replace(fs, name, (real) => (...words) => {
    step();
    return real(...words);
  });
}
replace(fs, 'writeFileSync', (real) => (...words) => {
  const [path, data] = words as unknown as [string, unknown];
  step(() => writeFileSync(path, halfOf(data)));
  return real(...words);
});
// Streams write by this one.
replace(fs, 'write', (real) => (...words) => {
  step();
  return real(...words);
});

if (VANISHING !== undefined) {
  const counting =
    (real: Work): Work =>
    (...words) => {
      if (String(words[0]) === VANISHING) {
        turns += 1;
        if (turns === Number(VANISHES_AT)) unlinkSync(VANISHING);
      }
      return real(...words);
    };
  for (const name of ['stat', 'lstat', 'readFile', 'open'] as const) replace(fsp, name, counting);
  for (const name of ['statSync', 'lstatSync', 'readFileSync'] as const) replace(fs, name, counting);
}

syncBuiltinESMExports();
process.on('exit', () => {
  if (COUNT_INTO !== undefined) writeFileSync(COUNT_INTO, JSON.stringify({ steps, turns }));
});
