// What a part's page tells beside its planned work: fabric, sums by kind, days, choices, readings, marks.
import { amountText } from '../figures/money-text.ts';
import { mentions } from '../record/mentions.ts';
import { once } from '../record/once.ts';
import type { CarRecord, Choice, Entry, Part } from '../record/record.ts';
import { byEntry } from '../rollup/by-entry.ts';
import type { Rollup, Row, Total } from '../rollup/cost-lines.ts';
import { fabricOf } from '../rollup/fabric.ts';
import { readingsByPart } from '../rollup/measured.ts';
import { datedText } from './dated.ts';
import { timeText, workersOf } from './day.ts';
import { fromLines, KIND, KINDS } from './line-text.ts';
import { page } from './links.ts';
import { resultText } from './measured/result-text.ts';
import { words } from './parts.ts';
import { firstWords } from './prose.ts';
import { readingText } from './readings.ts';

/** What the part is made of now, in words. */
export function fabricNow(part: Part, record: CarRecord): string | undefined {
  const fabric = fabricOf(part, record);
  return fabric && fabricText(fabric.now) + (fabric.note ? ` (${fabric.note})` : '');
}

/** `earlier repair` of `earlier-repair`. */
export function fabricText(fabric: string): string {
  return fabric === 'original-repaired' ? 'original, repaired' : words(fabric);
}

/** The choices that a part is in. */
export function choicesOf(part: Part, record: CarRecord): Choice[] {
  return record.choices.filter((choice) => choice.part.includes(part.id));
}

/** What something has taken so far, a row for each kind, each with its lines. */
export type KindSums = {
  rows: { name: string; time: string; charged: string; from: string; to: string }[];
  time: string;
  charged: string;
  from: string;
  to: string;
};

/** Hours and money by kind; nothing for a row without a line. */
export function kindSums(
  by: 'part' | 'choice',
  row: Row | undefined,
  record: CarRecord,
): KindSums | undefined {
  if (!row || row.lines.length === 0) return undefined;
  const to = page.lines(by, row.key);
  const cells = (total: Total) => ({
    time: timeText(total.minutes),
    charged: amountText(total.charged, record.currency),
    from: fromLines(total.lines.length),
  });
  return {
    rows: KINDS.flatMap((kind) => {
      const total = row.kinds[kind];
      return total ? [{ name: KIND[kind], ...cells(total), to: `${to}#${kind}` }] : [];
    }),
    ...cells(row),
    to,
  };
}

/** One entry that names the part, with what it took of the part that day. */
export type PartDay = {
  day: string;
  page: string;
  who: string;
  words: string;
  time: string;
  charged: string;
};

/** Every entry that names the part or a planned line of it, whether or not it cost anything. */
export function daysOfPart(part: Part, record: CarRecord, rollup: Rollup): PartDay[] {
  const named = entriesByPart(record).get(part.id);
  const row = rollup.tables.part.rows.find(({ key }) => key === part.id);
  const totals = byEntry(row?.lines ?? []);
  return record.entries
    .filter((entry) => named?.has(entry))
    .map((entry) => {
      const total = totals.get(entry.id);
      return {
        day: datedText(entry.day),
        page: page.day(entry.id),
        who: workersOf(entry, record).join(', '),
        words: firstWords(entry.body.tree),
        time: timeText(total?.minutes ?? 0),
        charged: total ? amountText(total.charged, record.currency) : '',
      };
    });
}

/** The entries that name each part or a planned line of it. */
const entriesByPart = once((record: CarRecord) => {
  const named = new Map<string, Set<Entry | undefined>>();
  for (const { refers, name, entry } of mentions(record)) {
    if (refers !== 'part' && refers !== 'line') continue;
    const slash = name.indexOf('/');
    if (refers === 'line' && slash < 0) continue;
    const part = refers === 'part' ? name : name.slice(0, slash);
    named.set(part, (named.get(part) ?? new Set()).add(entry));
  }
  return named;
});

/** Readings taken on a part, oldest first, each with what follows from it. */
export function readingsOfPart(part: Part, record: CarRecord) {
  return (readingsByPart(record).get(part.id) ?? []).map((measured) => ({
    day: datedText(measured.day),
    page: page.day(measured.entry),
    kind: measured.kind,
    state: measured.state,
    text: readingText(measured.reading, record.units),
    result: resultText(measured, record.units),
    note: measured.reading.note ?? '',
  }));
}

/** Tags of what came off a part. */
export function marksOfPart(part: Part, record: CarRecord) {
  return (marksByPart(record).get(part.id) ?? []).map(
    ({ entry, mark: { mark, what, count, kept, as, 'from-where': where } }) => ({
      mark,
      what: count === undefined ? what : `${what} (${count})`,
      where: where ?? '',
      kept: kept ?? '',
      as,
      day: datedText(entry.day),
      page: page.day(entry.id),
    }),
  );
}

const marksByPart = once(({ entries }: CarRecord) =>
  Map.groupBy(
    entries.flatMap((entry) => (entry.marks ?? []).map((mark) => ({ entry, mark }))),
    ({ mark }) => mark.part,
  ),
);
