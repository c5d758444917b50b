// Time worked, kept as whole minutes.
import { type Reading, read, unread } from './reading.ts';
import { Exact } from './rounding.ts';

const EXPECTED = 'a time such as `3h 30m`, `3:30` or `3.5`';

/** Reads `3.5`, `3h 30m`, `3:30` or `210m` into whole minutes. */
export function readMinutes(text: string): Reading<number> {
  const bare = text.trim().toLowerCase();
  const parted = /^(?:(\d+)\s*h)?\s*(?:(\d+)\s*m)?$/.exec(bare);
  if (parted && bare !== '') return bounded(Number(parted[1] ?? 0) * 60 + Number(parted[2] ?? 0));
  const clock = /^(\d+):([0-5]\d)$/.exec(bare);
  if (clock) return bounded(Number(clock[1]) * 60 + Number(clock[2]));
  const decimal = /^(\d+(?:\.\d+)?|\.\d+)\s*h?$/.exec(bare);
  if (!decimal?.[1]) return unread(EXPECTED);
  const minutes = new Exact(decimal[1]).times(60);
  if (!minutes.round(0, 0).eq(minutes)) {
    const near = minutes.round(0, 1).toNumber();
    return unread(`a time in whole minutes, such as \`${Math.floor(near / 60)}h ${near % 60}m\``);
  }
  return bounded(minutes.toNumber());
}

function bounded(minutes: number): Reading<number> {
  return minutes > 600_000 ? unread(`${EXPECTED}, below ten thousand hours`) : read(minutes);
}

/** The one place where minutes become text: `3 h 20 m`. */
export function minutesText(minutes: number): string {
  const size = Math.abs(minutes);
  return `${minutes < 0 ? '−' : ''}${Math.floor(size / 60)} h ${String(size % 60).padStart(2, '0')} m`;
}

/** Minutes as a writer types them: `4h 15m`, `3h`, `45m`. */
export function writtenTime(minutes: number): string {
  const [hours, left] = [Math.floor(minutes / 60), minutes % 60];
  return [...(hours > 0 || left === 0 ? [`${hours}h`] : []), ...(left > 0 ? [`${left}m`] : [])].join(' ');
}
