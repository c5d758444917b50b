// The list of parts by group, and their marks on the drawing.
import { amountText } from '../figures/money-text.ts';
import type { CarRecord, Part } from '../record/record.ts';
import type { Rollup, Total } from '../rollup/cost-lines.ts';
import { type PartState, partState, type placesOnDrawing } from './car.ts';
import { timeText } from './day.ts';

/** Marks for the drawing: finished parts tinted, parts in hand hatched. */
export function marksOf(places: ReturnType<typeof placesOnDrawing>): Record<string, 'done' | 'hand'> {
  const marks: Record<string, 'done' | 'hand'> = {};
  for (const { at, state } of places) {
    if (state === 'done') marks[at] = 'done';
    if (state === 'in hand') marks[at] = 'hand';
  }
  return marks;
}

/** Hours and money of a row, empty where nothing stands. */
export type Sums = { time: string; charged: string };

/** One part in the list. */
export type PartItem = Sums & { part: Part; found: string; state: PartState };

/** The list: groups in the order in which the record first names them, what belongs to no part, and all. */
export type PartList = {
  groups: (Sums & { group: string; items: PartItem[] })[];
  whole: Sums | undefined;
  all: Sums;
};

export function partList(record: CarRecord, rollup: Rollup): PartList {
  const parts = new Map(rollup.tables.part.rows.map((row) => [row.key, row]));
  const groups = new Map(rollup.tables.group.rows.map((row) => [row.key, row]));
  const sums = (total: Total | undefined): Sums => ({
    time: timeText(total?.minutes ?? 0),
    charged: total ? amountText(total.charged, record.currency) : '',
  });
  const item = (part: Part): PartItem => ({
    part,
    found: part.found?.condition ?? 'not said',
    state: partState(part, rollup),
    ...sums(parts.get(part.id)),
  });
  const none = parts.get(undefined);
  return {
    groups: [...new Set(record.parts.map(({ group }) => group))].map((group) => ({
      group,
      ...sums(groups.get(group)),
      items: record.parts.filter((part) => part.group === group).map(item),
    })),
    whole: none && sums(none),
    all: sums(rollup.tables.part.total),
  };
}

/** An id as words: `earlier repair` of `earlier-repair`. */
export const words = (id: string) => id.replaceAll('-', ' ');

/** With a capital first. */
export const capital = (text: string) => text.replace(/^./u, (first) => first.toUpperCase());
