// What each part is made of now, and how much of the car is original, repaired or new, counted by parts.
import { once } from '../record/once.ts';
import type { CarRecord, Choice, Entry, Part } from '../record/record.ts';

/** `now` is one of the record's words for fabric, or `original-repaired`; `note` says how much of the part it is. */
export type FabricNow = { now: string; note?: string };

/** The same with where it is said: in an entry of the log, or by a decided choice; else on the part's own page. */
export type FabricSaid = FabricNow & { entry?: Entry; choice?: Choice };

/** The newest word of the log, else of a decided choice, else of the part's own page; nothing when nobody said. */
export function fabricSaid(part: Part, record: CarRecord): FabricSaid | undefined {
  const last = fabricLogged(part, record).at(-1);
  if (last) return last;
  const chosen = decidedOn(part, record).flatMap((choice): FabricSaid[] => {
    const way = choice.options.find(({ option }) => option === choice.decided?.option)?.way;
    return way && MADE[way] ? [{ now: MADE[way], choice }] : [];
  });
  const now = part['fabric-now'];
  return chosen.at(-1) ?? (now === undefined ? undefined : { now });
}

/** What a part is made of now, without where it is said. */
export function fabricOf(part: Part, record: CarRecord): FabricNow | undefined {
  const said = fabricSaid(part, record);
  return said && { now: said.now, ...(said.note !== undefined && { note: said.note }) };
}

/** What the log says of a part’s fabric, oldest first. */
function fabricLogged(part: Part, record: CarRecord): (FabricNow & { entry: Entry })[] {
  return (loggedByPart(record).get(part.id) ?? []).map(({ entry, line: { now, note } }) => ({
    now,
    ...(note !== undefined && { note }),
    entry,
  }));
}

/** Grouped once: every part asks. */
const loggedByPart = once(({ entries }: CarRecord) =>
  Map.groupBy(
    entries.flatMap((entry) => (entry.fabric ?? []).map((line) => ({ entry, line }))),
    ({ line }) => line.part,
  ),
);

/** The choices decided on a part, in order of the day. */
export function decidedOn(part: Part, record: CarRecord): Choice[] {
  return record.choices
    .filter((choice) => choice.part.includes(part.id) && choice.decided && !choice.withdrawn)
    .sort((a, b) => ((a.decided?.on ?? '') < (b.decided?.on ?? '') ? -1 : 1));
}

const MADE: Partial<Record<string, string>> = {
  repair: 'original-repaired',
  reproduction: 'reproduction',
  'used-original': 'period-part',
  'new-made': 'new-made',
};

/** The kinds that parts are counted by, in the order from most to least of the old car. */
export const KEPT = [
  'original',
  'original-repaired',
  'earlier-repair',
  'period-part',
  'reproduction',
  'new-made',
  'unknown',
] as const;
export type Kept = (typeof KEPT)[number];

/** A kind with its parts, and its share of all parts in whole hundredths; the shares come to 100. */
export type KeptShare = { kept: Kept; parts: { part: Part; note?: string }[]; percent: number };

/**
 * The parts by what they are now; a part that nobody spoke of is what it was found to be. An original part with a
 * note of how much of it was changed counts as repaired.
 */
export function fabricShares(record: CarRecord): KeptShare[] {
  const parts = record.parts.map((part) => {
    const { now = part.fabric ?? 'unknown', note } = fabricOf(part, record) ?? {};
    const kept = now === 'original' && note !== undefined ? 'original-repaired' : (now as Kept);
    return { kept, part, ...(note !== undefined && { note }) };
  });
  const counts = KEPT.map((kept) => parts.filter((each) => each.kept === kept).length);
  const percents = percentsOf(counts);
  return KEPT.map((kept, i) => ({
    kept,
    parts: parts.filter((each) => each.kept === kept).map(({ kept: _, ...each }) => each),
    percent: percents[i] ?? 0,
  })).filter(({ parts: own }) => own.length > 0);
}

/** Whole hundredths that come to 100: the largest of the fractions cut off are made up first. */
function percentsOf(counts: readonly number[]): number[] {
  const all = counts.reduce((sum, count) => sum + count, 0);
  if (all === 0) return counts.map(() => 0);
  const percents = counts.map((count) => Math.floor((100 * count) / all));
  const left = 100 - percents.reduce((sum, percent) => sum + percent, 0);
  const largest = counts
    .map((count, i) => ({ i, cut: (100 * count) % all }))
    .sort((a, b) => b.cut - a.cut || a.i - b.i)
    .slice(0, left);
  for (const { i } of largest) percents[i] = (percents[i] ?? 0) + 1;
  return percents;
}
