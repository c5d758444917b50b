// The questions that make a line: read off the schema, in the order in which a person thinks of them.
import type { CarRecord } from '../record.ts';
import { sheets } from '../schema/sheets.ts';
import { bare, said } from '../schema-at.ts';
import type { Keys, Value } from './edit.ts';
import { keyOrder, type Shape, within } from './key-order.ts';
import { saidValue } from './line-from-words.ts';
import { knownNames, problemsSoFar, refersTo } from './line-problems.ts';
import type { Suggested } from './suggested.ts';

/** One question. `offers` are the names or words it may be answered with, the likeliest first. */
export type Question = {
  key: string;
  says: string;
  example: string;
  needed: boolean;
  offers?: { value: string; label: string }[];
  likely?: string;
};

/**
 * What is asked of a line; the rest can be written by hand. A list that isn’t here is asked for every key. Of hours,
 * part and person are known before: they are what a line of hours begins with.
 */
const ASKED: { readonly [list: string]: readonly string[] } = {
  hours: ['line', 'work', 'time', 'note'],
  bought: ['from', 'what', 'part', 'price', 'count', 'freight', 'tax', 'bill'],
  outside: ['from', 'what', 'part', 'price', 'tax', 'bill'],
  ordered: ['from', 'what', 'part', 'line', 'price', 'expected'],
  returned: ['from', 'what', 'part', 'price', 'deposit', 'bill'],
};

/** The next question of a line, or nothing when it has all; `passed` are keys that were left out. */
export function nextQuestion(
  list: string,
  line: Keys,
  passed: ReadonlySet<string>,
  record: CarRecord,
  suggested: Suggested,
): Question | undefined {
  const item = within(within(sheets.entry, list), 0);
  const keys = ASKED[list] ?? keysOf(item, line);
  const key = keys.find((one) => line[one] === undefined && !passed.has(one));
  if (key === undefined) return undefined;
  const field = within(item, key, line) ?? kindField(item);
  const { description = '', examples: [example = ''] = [] } = said(field);
  const offers = offersFor(list, key, line, field, record, suggested);
  const likely = likelyFor(list, key, line, suggested);
  return {
    key,
    says: description.replace(/\.$/, ''),
    example,
    needed: field?.def.type !== 'optional',
    ...(offers ? { offers } : {}),
    ...(likely === undefined ? {} : { likely }),
  };
}

/** The line with an answer; a sentence when it isn’t understood. */
export function answered(
  list: string,
  line: Keys,
  key: string,
  answer: string,
  record: CarRecord,
): { line: Keys } | { wrong: string } {
  const item = within(within(sheets.entry, list), 0);
  const value: Value = key === 'kind' ? answer : saidValue(answer, within(item, key, line));
  const fresh = { ...line, [key]: value };
  const [wrong] = key === 'kind' ? [] : problemsSoFar(list, fresh, record);
  return wrong === undefined ? { line: fresh } : { wrong };
}

/** A line that has kinds is asked for its kind first. */
function keysOf(item: Shape, line: Keys): string[] {
  const keys = [...new Set(keyOrder(item, line))].filter((key) => key !== 'place');
  return keys.includes('kind') && line.kind === undefined ? ['kind'] : keys;
}

const kindField = (item: Shape) => {
  const [first] = (item && bare(item).options) ?? [];
  return first && within(first, 'kind');
};

function offersFor(
  list: string,
  key: string,
  line: Keys,
  field: Shape,
  record: CarRecord,
  suggested: Suggested,
): Question['offers'] {
  const item = within(within(sheets.entry, list), 0);
  if (key === 'kind') {
    const kinds = (item && bare(item).options) ?? [];
    return plain(kinds.flatMap((kind) => said(bare(kind).shape?.kind).examples ?? []));
  }
  const refers = refersTo(list, key, line);
  const part = typeof line.part === 'string' ? line.part : undefined;
  if (refers === 'part') {
    const names = new Map(record.parts.map(({ id, name }) => [id, name]));
    return suggested.parts.map((value) => ({ value, label: names.get(value) ?? value }));
  }
  if (refers === 'vendor') {
    const names = new Map((record.shop.vendors ?? []).map(({ id, name }) => [id, name]));
    return suggested.vendors.map((value) => ({ value, label: names.get(value) ?? value }));
  }
  if (refers === 'line') {
    if (list === 'hours' && part === undefined) return [];
    const own = suggested.lines.filter((open) => part === undefined || open.part === part);
    return own.map((open) => ({
      value: part === undefined ? open.name : open.name.slice(part.length + 1),
      label: open.do,
    }));
  }
  if (refers && refers !== 'photo') return plain([...(knownNames(refers, record) ?? [])]);
  const { entries } = (field ? bare(field) : {}) as { entries?: Record<string, string> };
  return entries && plain(Object.values(entries));
}

const plain = (values: readonly string[]) => values.map((value) => ({ value, label: value }));

/** The kind of work of the planned line, else the one last done on the part. */
function likelyFor(list: string, key: string, line: Keys, suggested: Suggested): string | undefined {
  if (list !== 'hours' || key !== 'work') return undefined;
  const planned = suggested.lines.find(({ name }) => name === `${line.part}/${line.line}`);
  return planned?.work ?? suggested.workOn.get(String(line.part));
}
