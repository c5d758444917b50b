// A bar while pictures are made: what is done, what is left, and about how long. Only in a terminal.

/** Where the bar is drawn; `columns` is the terminal's width. */
export type Screen = { isTTY?: boolean; columns?: number; write: (text: string) => unknown };

/** Counts up to `total`; `now` is in milliseconds. */
export function progress(total: number, screen: Screen, now: () => number = () => performance.now()) {
  const start = now();
  let done = 0;
  let drawn = Number.NEGATIVE_INFINITY;
  return {
    step(): void {
      done += 1;
      if (!screen.isTTY || (now() - drawn < 100 && done < total)) return;
      drawn = now();
      screen.write(`\r\x1b[2K${progressText(done, total, drawn - start, screen.columns ?? 80)}`);
    },
    end(): void {
      if (screen.isTTY && done > 0) screen.write('\r\x1b[2K');
    },
  };
}

/** `Photos ████░░░░ 1200 of 3000, 1800 left, about 4 min`. `spent` is in milliseconds. */
export function progressText(done: number, total: number, spent: number, columns: number): string {
  const left = total - done;
  const seconds = Math.ceil(((spent / done) * left) / 1000);
  const time = seconds >= 90 ? `${Math.round(seconds / 60)} min` : `${seconds} s`;
  const words = ` ${done} of ${total}, ${left} left, about ${time}`;
  const width = Math.max(0, Math.min(30, columns - words.length - 'Photos '.length - 1));
  const full = Math.round((width * done) / total);
  return `Photos ${'█'.repeat(full)}${'░'.repeat(width - full)}${words}`.slice(0, Math.max(0, columns - 1));
}
