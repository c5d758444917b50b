// What stands in a handed text where a line must say something that a later reader may not see. Without it the folder
// would open with errors, or a line of an option would be gone as if it had never been weighed.
import type { writtenFor } from '../../record/audience.ts';

type Values = Record<string, unknown>;

/** Stands for an amount. */
const NOUGHT = '0';

/** One of these must stand in a line of work. */
const COUNTED = ['hours', 'spend', 'outside'];

/** The kept values of a file with what must stand in them, and whether anything does; `values` are all of it. */
export function withStandIns(
  kind: Parameters<typeof writtenFor>[0],
  values: Values,
  kept: Values,
): { kept: Values; stoodIn: boolean } {
  if (kind !== 'choice') return { kept, stoodIn: hasOther(values, kept) };
  const all = setsOf(values.options);
  const options = setsOf(kept.options).map((option) => {
    const [whole] = all.filter(({ option: name }) => name === option.option);
    return { ...option, lines: linesOf(setsOf(whole?.lines), setsOf(option.lines)) };
  });
  const lines = options.flatMap((option) => option.lines);
  return {
    kept: { ...kept, options },
    stoodIn: lines.some((line) => ['price', ...COUNTED].some((key) => line[key] === NOUGHT)),
  };
}

/** Every line of an option: work says what is done, a purchase what and from whom; neither how much. */
function linesOf(all: readonly Values[], kept: readonly Values[]): Values[] {
  return all.map((line) => {
    const own = kept.find((one) => samePlace(one, line)) ?? { place: line.place };
    if (line.buy !== undefined) return { ...own, price: own.price ?? NOUGHT };
    const hidden = COUNTED.filter((key) => line[key] !== undefined && own[key] === undefined);
    return { ...own, ...Object.fromEntries(hidden.map((key) => [key, NOUGHT])) };
  });
}

/** Whether an amount was replaced. */
function hasOther(value: unknown, kept: unknown): boolean {
  if (typeof kept === 'string') return kept !== value;
  if (Array.isArray(kept)) {
    const all = Array.isArray(value) ? value : [];
    return kept.some((one, i) => hasOther(all.find((other) => samePlace(one, other)) ?? all[i], one));
  }
  if (typeof kept !== 'object' || kept === null) return false;
  return Object.entries(kept).some(([key, one]) => hasOther((value as Values | undefined)?.[key], one));
}

const setsOf = (list: unknown): Values[] =>
  Array.isArray(list) ? list.filter((one): one is Values => typeof one === 'object' && one !== null) : [];

/** Lines of a list are known by where they were written. */
export function samePlace(one: unknown, other: unknown): boolean {
  const [a, b] = [one, other].map((line) => (line as { place?: { line: number; column: number } })?.place);
  return a !== undefined && a.line === b?.line && a.column === b.column;
}
