// What stands under the table: when it was made, of which state of the program, with which versions, on what machine.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';

/** `load`: how busy the machine was when it began. */
export function underTable(begun: Date, load: number): string {
  const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as {
    dependencies: Record<string, string>;
  };
  const named = ['astro', 'sharp', 'yaml', 'remark-parse', 'zod'];
  const versions = named.map((name) => `${name} ${dependencies[name]}`).join(', ');
  return `${begun.toISOString().slice(0, 10)}, commit ${commit()}; Node ${process.versions.node}, ${versions}; ${cpus().length} x ${cpus()[0]?.model ?? 'not named'}; ${load.toFixed(1)} programs waiting when it began.`;
}

export const loadNow = () => loadavg()[0] ?? 0;

/** The state of the program; nothing is known of it in a folder that git doesn't keep. */
function commit(): string {
  const git = (...words: string[]) =>
    execFileSync('git', words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }).trim();
  try {
    return `${git('rev-parse', '--short', 'HEAD')}${git('status', '--porcelain', '--', 'src') ? ' with changes' : ''}`;
  } catch {
    return 'unknown';
  }
}
