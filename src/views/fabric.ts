// What is original, what was repaired and what is new, part by part: each change with who wrote it down, when, and why.
import type { Day } from '../figures/days.ts';
import type { CarRecord, Choice, Entry, Part } from '../record/record.ts';
import { decidedOn, fabricSaid, fabricShares, type Kept } from '../rollup/fabric.ts';
import { chosenName, sentence } from './choices.ts';
import { datedText } from './dated.ts';
import { workersOf } from './day.ts';
import { page } from './links.ts';
import { fabricText } from './part.ts';
import { capital } from './parts.ts';

export const KEPT_WORDS: { [kept in Kept]: string } = {
  original: 'Original, as it was built',
  'original-repaired': 'Original, repaired or with new pieces let in',
  'earlier-repair': 'Repaired before this work, and left so',
  'period-part': 'Another part of the same age',
  reproduction: 'Reproduction',
  'new-made': 'New made',
  unknown: 'Not known',
};

/** A text that opens a page. */
export type Linked = { text: string; to: string };

/** Why a part is what it is: a decided choice with its reason, or how the part was found. */
export type Reason = { choice?: Linked; text: string };

/** What is known of a change: the entry that says it, who was at work in it, and why. */
export type Change = { said: Linked | undefined; who: string; reasons: Reason[] };

/** A part that isn’t wholly as it was built. */
export type ChangedPart = Change & { part: Linked; id: string; found: string; now: string };

export type FabricPage = {
  opening: string;
  shares: { kept: Kept; words: string; count: string; percent: string }[];
  /** Parts as they were built, by name. */
  original: Linked[];
  changed: { kept: Kept; title: string; rows: ChangedPart[] }[];
};

export function fabricPage(record: CarRecord): FabricPage {
  const shares = fabricShares(record);
  const changed = shares.filter(({ kept }) => kept !== 'original');
  const original = shares.find(({ kept }) => kept === 'original')?.parts ?? [];
  return {
    opening: openingText(shares, record.parts.length),
    shares: shares.map(({ kept, parts, percent }) => ({
      kept,
      words: KEPT_WORDS[kept],
      count: String(parts.length),
      percent: `${percent}%`,
    })),
    original: original.map(({ part }) => ({ text: part.name, to: page.part(part.id) })),
    changed: changed.map(({ kept, parts }) => ({
      kept,
      title: KEPT_WORDS[kept],
      rows: parts.map(({ part, note }) => ({
        part: { text: part.name, to: page.part(part.id) },
        id: part.id,
        found: capital(fabricText(part.fabric ?? 'not said')),
        now: capital(note ?? fabricText(kept)),
        ...changeOf(part, record),
      })),
    })),
  };
}

/** Who, when and why of what a part is made of now. */
export function changeOf(part: Part, record: CarRecord): Change {
  const { entry } = fabricSaid(part, record) ?? {};
  return {
    said: entry && { text: datedText(entry.day), to: page.day(entry.id) },
    who: entry ? atWork(part, entry, record).join(', ') : '',
    reasons: reasonsOf(part, record),
  };
}

/** Why a part was worked on, as far as was decided by a day: the choices on it, else how it was found. */
export function reasonsOf(part: Part, record: CarRecord, by?: Day): Reason[] {
  const decided = decidedOn(part, record).filter((choice) => !by || (choice.decided?.on ?? '') <= by);
  if (decided.length > 0)
    return decided.map((choice) => ({
      choice: { text: choice.question, to: page.choice(choice.id) },
      text: why(choice),
    }));
  const { found } = part;
  if (!found) return [];
  return [{ text: sentence(`Found ${found.condition}${found.note ? `: ${found.note}` : ''}`) }];
}

/** `Decided March 14, 2025, by the owner: Splice the front end. The wood behind the cut rings.` */
function why(choice: Choice): string {
  const { decided } = choice;
  if (!decided) return '';
  return `Decided ${datedText(decided.on)}, by ${decided.by}: ${sentence(chosenName(choice))} ${sentence(decided.reason)}`;
}

/** Who worked on the part in an entry; where no line names it, everybody of the entry. */
function atWork(part: Part, entry: Entry, record: CarRecord): string[] {
  const own = (entry.hours ?? []).filter(
    (line) => line.part === part.id || line.line?.startsWith(`${part.id}/`),
  );
  return workersOf(
    own.length > 0
      ? { ...entry, ...(own.some(({ by }) => !by) ? {} : { by: undefined }), hours: own }
      : entry,
    record,
  );
}

/** `51 parts, each counted once. 26 are as they were built.` */
function openingText(
  shares: readonly { kept: Kept; parts: readonly unknown[]; percent: number }[],
  all: number,
): string {
  if (all === 0) return 'No part is written down yet.';
  const of = (...kinds: Kept[]) =>
    shares.reduce((sum, { kept, parts }) => sum + (kinds.includes(kept) ? parts.length : 0), 0);
  const told: [number, string, string][] = [
    [of('original'), 'is as it was built', 'are as they were built'],
    [of('original-repaired', 'earlier-repair'), 'is repaired', 'are repaired'],
    [of('reproduction', 'new-made'), 'is new', 'are new'],
    [of('period-part'), 'is another of the same age', 'are others of the same age'],
    [of('unknown'), 'is of no known origin', 'are of no known origin'],
  ];
  const counted = told.flatMap(([count, one, many]) =>
    count > 0 ? [`${count} ${count === 1 ? one : many}`] : [],
  );
  return `Of ${all === 1 ? '1 part' : `${all} parts`}, ${counted.join(', ')}.`;
}
