// Which file a day's entry is, or would be.
import { type Day, daysBetween } from '../../figures/days.ts';

type Lying = { file: string; folder: string; day: Day };

/** The entry of a day among the record's files; else a new name, laid where its neighbors lie. */
export function entryFileOf(day: Day, files: readonly string[]): { file: string; isNew: boolean } {
  const entries = files.flatMap((file): Lying[] => {
    const [, folder = '', on = ''] = /^(log\/(?:.*\/)?)(\d{4}-\d{2}-\d{2})(?:-[b-z])?\.md$/.exec(file) ?? [];
    return on === '' ? [] : [{ file, folder, day: on }];
  });
  // `2025-04-16.md` comes before `2025-04-16-b.md`.
  const [there] = entries.filter((entry) => entry.day === day).sort((a, b) => a.file.length - b.file.length);
  if (there) return { file: there.file, isNew: false };
  const distance = (entry: Lying) => Math.abs(daysBetween(entry.day, day));
  const [nearest] = entries.sort((a, b) => distance(a) - distance(b));
  const folder = nearest
    ? nearest.folder.split('/').map((step) => ofDay(step, nearest.day, day))
    : ['log', ''];
  return { file: `${folder.join('/')}${day}.md`, isNew: true };
}

/** A folder named for a year or a month is another for another day. */
function ofDay(step: string, from: Day, to: Day): string {
  for (const [start, end] of [
    [0, 7],
    [0, 4],
    [5, 7],
  ] as const) {
    if (step === from.slice(start, end)) return to.slice(start, end);
  }
  return step;
}
