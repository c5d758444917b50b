// What has changed in lines that were stated: each pair of the line as it was stated and as it reads now.
import type { Correction } from '../estimate/statement.ts';
import { type StatedLine, sameRule } from './stated-lines.ts';

export type StatedCorrection = Correction<StatedLine>;

/**
 * By day and entry. Lines that read the same cancel out; of an entry's others, those that are most alike are taken for
 * one that was edited, and the rest for gone or come. What is gone stands last.
 */
export function correctionsOf(stated: readonly StatedLine[], now: readonly StatedLine[]): StatedCorrection[] {
  const before = Map.groupBy(stated, ({ entry }) => entry);
  const after = Map.groupBy(now, ({ entry }) => entry);
  return [...new Set([...before.keys(), ...after.keys()])]
    .sort()
    .flatMap((entry) => ofEntry(before.get(entry) ?? [], after.get(entry) ?? []));
}

/** Nothing that a statement says of them differs. */
export function sameLine(a: StatedLine, b: StatedLine): boolean {
  return everything(a) === everything(b);
}

function ofEntry(stated: readonly StatedLine[], now: readonly StatedLine[]): StatedCorrection[] {
  if (stated.length === now.length && stated.every((line, i) => isAsWas(line, now[i]))) return [];
  const was = [...stated];
  const is = [...now];
  const found = LIKENESS.flatMap((alike, i) => {
    const pairs = paired(was, is, alike);
    return i === 0 ? [] : pairs;
  });
  const come = is.map((line): StatedCorrection => ({ now: line }));
  const at = (one: StatedCorrection) => (one.now ? now.indexOf(one.now) : now.length);
  const standing = [...found, ...come].sort((a, b) => at(a) - at(b));
  return [...standing, ...was.map((line) => ({ was: line }))];
}

/** True only of what says the same, held in the same way, wherever it is written: most lines, which then need no closer look. */
function isAsWas(was: unknown, now: unknown): boolean {
  if (typeof was !== 'object' || typeof now !== 'object' || !was || !now) return Object.is(was, now);
  const keys = saidIn(was);
  return (
    keys.length === saidIn(now).length &&
    keys.every(
      (key) => Object.hasOwn(now, key) && isAsWas(was[key as keyof typeof was], now[key as keyof typeof now]),
    )
  );
}

const saidIn = (line: object) => Object.keys(line).filter((key) => key !== 'place');

/** Takes out of both lists, in order, those that are alike. */
function paired(was: StatedLine[], is: StatedLine[], alike: (line: StatedLine) => string) {
  const pairs: { was: StatedLine; now: StatedLine }[] = [];
  const others = is.map(alike);
  for (const line of [...was]) {
    const found = others.indexOf(alike(line));
    const now = is[found];
    if (!now) continue;
    others.splice(found, 1);
    is.splice(found, 1);
    was.splice(was.indexOf(line), 1);
    pairs.push({ was: line, now });
  }
  return pairs;
}

/** The same in everything, then in less and less. */
const LIKENESS: readonly ((line: StatedLine) => string)[] = [
  everything,
  ({ kind, what, part, vendor, person }) => sign(kind, what, part, vendor, person),
  ({ kind, what }) => sign(kind, what),
  ({ kind, part, work, vendor, bill, person }) => sign(kind, part, work, vendor, bill, person),
  ({ kind }) => kind,
];

/** All that a statement says of a line, but not where it is written. */
function everything({ place, taxes, amounts, timed, ...line }: StatedLine): string {
  const said = Object.entries(line).filter(([, word]) => word !== undefined);
  const charged = Object.entries(amounts).filter(([, amount]) => amount !== 0);
  const taxed = taxes.map(({ rule, within, basis, amount }) => sign(sameRule(rule), within, basis, amount));
  const inOrder = (pairs: [string, unknown][]) => pairs.map((pair) => sign(...pair)).sort();
  return sign(timed?.minutes, timed?.rate, ...inOrder(said), ...inOrder(charged), ...taxed.sort());
}

function sign(...words: readonly unknown[]): string {
  return JSON.stringify(words.map((word) => word ?? null));
}
