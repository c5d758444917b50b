// What a record is once it has been read: plain objects, each knowing where it was written.
import type { Currency } from '../figures/currency.ts';
import type { Day } from '../figures/days.ts';
import type { Units } from '../figures/lengths.ts';
import type { Body } from './body.ts';
import type { Path } from './front-matter.ts';
import type { Place } from './place.ts';
import type { CarSheet } from './schema/car.ts';
import type { ChoiceSheet } from './schema/choice.ts';
import type { EntrySheet } from './schema/entry.ts';
import type { PartSheet } from './schema/part.ts';
import type { ShopSheet } from './schema/shop.ts';
import type { StatementSheet } from './schema/statement.ts';

/** What every file of the record has beside its own fields. */
type Written = {
  file: string;
  body: Body;
  /** The place of a field of this file. Lines in lists carry their own `place` too. */
  placeAt: (path: Path) => Place;
  /** False when a field or a line of the file was wrong and is missing here. */
  whole: boolean;
  /** True of a top-level field in which nothing was wrong, so that what it lists is all there is. */
  sure: (field: string) => boolean;
};

export type Car = CarSheet & Written;
export type Shop = ShopSheet & Written;
/** A part; `id` is its file name without `.md`. */
export type Part = PartSheet & Written & { id: string };
export type Choice = ChoiceSheet & Written & { id: string };
/** A day's entry; `id` is `2025-04-16` or `2025-04-16-b`. */
export type Entry = EntrySheet & Written & { id: string; day: Day };

/**
 * An issued statement; `id` is its file name without `.md`, `digestRead` the digest of what it says, which is missing where
 * something is wrong with it.
 */
export type IssuedStatement = StatementSheet & Written & { id: string; digestRead?: string };

/** A planned line with the part it belongs to; its full name is `part/line`. */
export type PlannedLine = NonNullable<Part['planned']>[number];
export type Option = Choice['options'][number];
export type HoursLine = NonNullable<Entry['hours']>[number];
export type BoughtLine = NonNullable<Entry['bought']>[number];
export type OutsideLine = NonNullable<Entry['outside']>[number];
export type ReturnedLine = NonNullable<Entry['returned']>[number];

/** Bytes of the largest text that is read: more is no day’s words. */
export const LARGEST_TEXT = 1_000_000;

/** A text of the record as it came from the disk. `file` is relative to the record's folder, with `/`. */
export type WrittenFile = { file: string; text: string };

/** One car's record. Entries stand in order of their day, parts and choices in order of their file. */
export type CarRecord = {
  car: Car;
  shop: Shop;
  parts: Part[];
  choices: Choice[];
  entries: Entry[];
  /** Issued statements in order of their periods. */
  statements: IssuedStatement[];
  /** Pictures present, as paths relative to the record's folder, sorted. */
  photos: string[];
  currency: Currency;
  units: Units;
  /** Files that are there and couldn't be read: totals miss them, and what names them isn't unknown. */
  unread: ReadonlySet<string>;
};

/** `part/line`, whether the writer gave the part or left it to be understood. */
export function lineName(written: string, part: string | undefined): string {
  return written.includes('/') || part === undefined ? written : `${part}/${written}`;
}

/** Full names of the planned lines that a choice settles; a choice of one part may leave the part to be understood. */
export function settledBy({ settles = [], part }: Choice): string[] {
  return settles.map((line) => lineName(line, part.length === 1 ? part[0] : undefined));
}

/** The person of a line of hours: its own, the day's, or the only one the shop has. */
export function personOf(line: { by?: string | undefined }, entry: Entry, shop: Shop): string | undefined {
  return line.by ?? entry.by ?? (shop.people.length === 1 ? shop.people[0]?.id : undefined);
}

/** The picture that a writer's `file` names: a path under photos/, or a name in the day's own folder. */
export function photoPath(written: string, day: Day): string {
  if (written.startsWith('photos/')) return written;
  return written.includes('/') ? `photos/${written}` : `photos/${day}/${written}`;
}
