import { spawn } from 'node:child_process';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { SMALL } from '../record/small.ts';
import { emptyFolder, npmRun } from './run.ts';

/** Runs the check that watches a folder; gives each report as it comes. */
function watching(folder: string) {
  const running = spawn(process.execPath, ['src/commands/check.ts', '--watch', folder]);
  let said = '';
  const waiting: ((report: string) => void)[] = [];
  const reports: string[] = [];
  running.stdout.setEncoding('utf8').on('data', (more: string) => {
    said += more;
    for (;;) {
      const found =
        /^Checking\. Ctrl-C stops it\.\n([\s\S]*?\d+ errors? and \d+ warnings?\. Read: .*\n)/.exec(said);
      if (!found) return;
      said = said.slice(found[0].length);
      const next = waiting.shift();
      if (next) next(found[1] ?? '');
      else reports.push(found[1] ?? '');
    }
  });
  const next = () =>
    new Promise<string>((done) => (reports.length > 0 ? done(reports.shift() ?? '') : waiting.push(done)));
  return {
    /** The next report that says this; on a busy machine a save may be seen half done first. */
    async until(wanted: RegExp): Promise<void> {
      while (!wanted.test(await next()));
    },
    /** How many reports came while it was quiet for so many milliseconds. */
    async during(quiet: number): Promise<number> {
      reports.length = 0;
      await new Promise((later) => setTimeout(later, quiet));
      return reports.length;
    },
    stop: () =>
      new Promise<number | null>((done) => {
        running.on('close', done);
        running.kill('SIGINT');
      }),
  };
}

it('npm run check --watch checks again whenever a file is saved, comes or goes, until it is stopped', async () => {
  const folder = await emptyFolder();
  for (const name of ['parts', 'log']) await mkdir(join(folder, name));
  for (const [name, text] of Object.entries(SMALL)) await writeFile(join(folder, name), text);
  const check = watching(folder);
  try {
    await check.until(/^0 errors and 0 warnings\. Read: 1 entry,/);

    const entry = join(folder, 'log/2025-03-03.md');
    await writeFile(entry, SMALL['log/2025-03-03.md'].replace('3h 30m', '3.5x'));
    await check.until(
      /^log\/2025-03-03\.md:6:11 {2}error {2}Unexpected `3\.5x`.*\n\n1 error and 0 warnings\./,
    );

    // As many editors save: beside it first, then in its place.
    await writeFile(join(folder, 'log/.2025-03-03.md.tmp'), SMALL['log/2025-03-03.md']);
    await rename(join(folder, 'log/.2025-03-03.md.tmp'), entry);
    await check.until(/^0 errors and 0 warnings\. Read: 1 entry,/);

    await mkdir(join(folder, 'log/2025-04'));
    await check.until(/Read: 1 entry,/);
    await writeFile(join(folder, 'log/2025-04/2025-04-16.md'), 'Words.\n');
    await check.until(/Read: 2 entries,/);

    await rm(join(folder, 'log/2025-04'), { recursive: true });
    await check.until(/Read: 1 entry,/);

    // What begins with a dot isn’t the record’s.
    await check.during(500);
    await writeFile(join(folder, 'log/.swap'), 'x');
    expect(await check.during(600)).toBe(0);
  } finally {
    expect(await check.stop()).toBe(0);
  }
});

it('says that there is no folder, and ends', async () => {
  const { code, out } = await npmRun('check', ['--watch', join(await emptyFolder(), 'gone')]);
  expect(out).toContain('There is no folder');
  expect(code).toBe(1);
});
