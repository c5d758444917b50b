// Asks what the columns are that don’t say it by their heading.
import { keyOfHeading, keysOfSheet, type SheetKind } from '../../record/writing/sheet/columns.ts';
import type { Asker } from '../log/asker.ts';

/** Keys by heading, `-` for a column that is left out. */
export async function askColumns(asker: Asker, headings: readonly string[]): Promise<Map<string, string>> {
  const knows = (kind: SheetKind, key: string) =>
    headings.some((heading) => keyOfHeading(heading, kind) === key);
  const kind: SheetKind = knows('hours', 'time')
    ? 'hours'
    : knows('bills', 'price')
      ? 'bills'
      : ((await asker.pick({
          message: 'What does the sheet hold?',
          offers: [
            { value: 'hours', label: 'hours worked' },
            { value: 'bills', label: 'vendors’ bills' },
          ],
        })) as SheetKind);
  const named = new Map<string, string>();
  const taken = new Set(headings.map((heading) => keyOfHeading(heading, kind)));
  for (const heading of headings) {
    if (keyOfHeading(heading, kind) !== undefined) continue;
    const offers = keysOfSheet(kind)
      .filter((key) => !taken.has(key))
      .map((value) => ({ value, label: value }));
    const key = await asker.pick({
      message: `What is the column \`${heading}\`?`,
      offers: [{ value: '-', label: 'left out' }, ...offers],
    });
    named.set(heading, key);
    if (key !== '-') taken.add(key);
  }
  return named;
}
