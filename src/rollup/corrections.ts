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
  const was = [...stated];
  const is = [...now];
  const found = LIKENESS.flatMap((alike, i) => {
    const pairs = paired(was, is, alike);
    return i === 0 ? [] : pairs;
  });
  const come = is.map((line): StatedCorrection => ({ now: line }));
  const standing = [...found, ...come].sort((a, b) => at(a, now) - at(b, now));
  return [...standing, ...was.map((line) => ({ was: line }))];
}

const at = ({ now }: StatedCorrection, of: readonly StatedLine[]) => (now ? of.indexOf(now) : of.length);

/** Takes out of both lists, in order, those that are alike. */
function paired(was: StatedLine[], is: StatedLine[], alike: (line: StatedLine) => string) {
  const pairs: { was: StatedLine; now: StatedLine }[] = [];
  for (const line of [...was]) {
    const sign = alike(line);
    const at = is.findIndex((other) => alike(other) === sign);
    const now = is[at];
    if (!now) continue;
    is.splice(at, 1);
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
  const { day, entry, kind, what, part, work, person, minutes, noCharge, inPrice, vendor, bill, byOwner } =
    line;
  const said = sign(
    day,
    entry,
    kind,
    what,
    part,
    work,
    person,
    minutes,
    noCharge,
    inPrice,
    vendor,
    bill,
    byOwner,
  );
  const charged = Object.entries(amounts)
    .filter(([, amount]) => amount !== 0)
    .map(([of, amount]) => `${of} ${amount}`)
    .sort();
  const taxed = taxes
    .map(({ rule, within, basis, amount }) => sign(sameRule(rule), within, basis, amount))
    .sort();
  return sign(said, timed?.minutes, timed?.rate, ...charged, ...taxed);
}

const sign = (...words: readonly unknown[]) => JSON.stringify(words.map((word) => word ?? null));
