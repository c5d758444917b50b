// A bar while files are written or read: what is done, what is left, and about how long. Only in a terminal.
import type { Screen } from '../photos/progress.ts';

/** Counts up to a total that may still grow; `now` is in milliseconds. */
export function fileProgress(screen: Screen, now: () => number = () => performance.now()) {
  const start = now();
  let done = 0;
  let drawn = Number.NEGATIVE_INFINITY;
  return {
    step(total: number): void {
      done += 1;
      if (!screen.isTTY || (now() - drawn < 100 && done < total)) return;
      drawn = now();
      screen.write(`\r\x1b[2K${fileProgressText(done, total, drawn - start, screen.columns ?? 80)}`);
    },
    end(): void {
      if (screen.isTTY && done > 0) screen.write('\r\x1b[2K');
    },
  };
}

/** `Files ████░░░░ 120 of 300, 180 left, about 4 min`. `spent` is in milliseconds. */
export function fileProgressText(done: number, total: number, spent: number, columns: number): string {
  const left = Math.max(0, total - done);
  const seconds = Math.ceil((spent * left) / done / 1000);
  const time = seconds >= 90 ? `${Math.round(seconds / 60)} min` : `${seconds} s`;
  const words = ` ${done} of ${total}, ${left} left, about ${time}`;
  const width = Math.max(0, Math.min(30, columns - words.length - 'Files '.length - 1));
  const full = Math.min(width, Math.round((width * done) / total));
  return `Files ${'█'.repeat(full)}${'░'.repeat(width - full)}${words}`.slice(0, Math.max(0, columns - 1));
}
