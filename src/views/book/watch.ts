// What remains to be watched: only what the record says, the cautions that go with it, and how the car is kept.
import { type CarRecord, lineName } from '../../record/record.ts';
import { CAUTION_CLOSING, type Caution, cautionsOf } from '../cautions.ts';
import { datedText } from '../dated.ts';
import { hazardsOfDay, hazardsOfPart } from '../hazards.ts';
import { namesOf } from '../names.ts';
import { CARE_CLOSING, type Care, careFor } from './care.ts';
import { notPassed } from './measured.ts';

/** A heading with what stands under it. */
export type Watched = { title: string; items: string[] };

export type BookWatch = {
  lists: Watched[];
  /** Cautions for what the record names, each with the parts it is named for. */
  cautions: (Caution & { parts: string })[];
  closing: string;
  care: Care[];
  careClosing: string;
};

export function bookWatch(record: CarRecord): BookWatch {
  const cautions = cautionsFor(record);
  return {
    lists: [
      { title: 'Work that was planned and isn’t finished', items: unfinished(record) },
      { title: 'Questions that are still open', items: openChoices(record) },
      { title: 'Readings that were not as they should be when last taken', items: notPassed(record) },
      { title: 'Parts looked for and not found', items: notFound(record) },
    ].filter(({ items }) => items.length > 0),
    cautions,
    closing: cautions.length > 0 ? CAUTION_CLOSING : '',
    care: careFor(
      record,
      cautions.map(({ hazard }) => hazard),
    ),
    careClosing: CARE_CLOSING,
  };
}

function unfinished(record: CarRecord): string[] {
  const done = new Set(
    record.entries.flatMap(({ finished = [] }) => finished.map((name) => lineName(name, undefined))),
  );
  return record.parts.flatMap(({ id, name, planned = [] }) =>
    planned.filter(({ line }) => !done.has(`${id}/${line}`)).map((line) => `${name}: ${line.do}.`),
  );
}

function openChoices(record: CarRecord): string[] {
  return record.choices
    .filter(({ decided, withdrawn }) => !decided && !withdrawn)
    .map(({ question, asked }) => `${question} (asked ${datedText(asked)})`);
}

/** Of each thing the newest word; what was found, or is still asked for, isn't told apart by the record. */
function notFound(record: CarRecord): string[] {
  const names = namesOf(record);
  const newest = new Map(
    record.entries.flatMap(({ sought = [], day }) =>
      sought.map((line) => [line.what, { ...line, day }] as const),
    ),
  );
  return [...newest.values()]
    .filter(({ outcome }) => outcome === undefined || /\bnot found\b|\bnone\b/i.test(outcome))
    .map(
      ({ what, part, outcome, day }) =>
        `${what}${part ? ` (${names.part(part)})` : ''}: ${outcome ?? 'still open'}, ${datedText(day)}.`,
    );
}

function cautionsFor(record: CarRecord): BookWatch['cautions'] {
  const parts = new Map<string, Set<string>>();
  const add = (hazards: readonly string[], name: string | undefined) => {
    for (const hazard of hazards) {
      const own = parts.get(hazard) ?? new Set();
      if (name !== undefined) own.add(name);
      parts.set(hazard, own);
    }
  };
  const names = namesOf(record);
  for (const part of record.parts) add(hazardsOfPart(part), part.name);
  for (const entry of record.entries) {
    add(hazardsOfDay(entry, record), undefined);
    for (const { part, what } of entry.finishes ?? [])
      if (/\blead\b/i.test(what)) add(['lead'], names.part(part));
  }
  return cautionsOf([...parts.keys()]).map((caution) => ({
    ...caution,
    parts: [...(parts.get(caution.hazard) ?? [])].join(', '),
  }));
}
