// Tells the first words of a line apart: which is the part, which the kind of work, which the time.
import { readMinutes } from '../../figures/hours.ts';
import { didYouMean } from '../nearest.ts';
import type { CarRecord } from '../record.ts';
import { sheets } from '../schema/sheets.ts';
import { bare, said } from '../schema-at.ts';
import type { Keys } from './edit.ts';
import { type Shape, within } from './key-order.ts';
import { LEADS } from './leads.ts';
import type { SaidLine } from './line-from-words.ts';
import { knownNames, refersTo } from './line-problems.ts';

const TIME = /(?:^|\s)(\d+\s*h(?:\s*\d+\s*m)?|\d+\s*m|\d+:\d\d|\d+(?:\.\d+)?)(?=\s|$)/;

/** Reads the words of a line’s first piece. A word that is none of what may stand there is refused. */
export function leadWords(first: string, list: string, record: CarRecord): SaidLine {
  const { words: keys = [], rest } = LEADS[list] ?? {};
  const item = within(within(sheets.entry, list), 0);
  const found: Record<string, string> = {};
  let left = first;
  if (keys.includes('time')) {
    const [all = '', time = ''] = TIME.exec(first) ?? [];
    if (readMinutes(time).ok) {
      found.time = time;
      left = first.replace(all, ' ');
    }
  }
  const others: string[] = [];
  for (const word of left.split(/\s+/).filter((one) => one !== '')) {
    const key = keys.find((one) => found[one] === undefined && isOne(one, word, list, item, record));
    if (key === 'part' && word.includes('/') && list === 'hours') {
      const [part = '', line = ''] = word.split('/');
      Object.assign(found, { part, line });
    } else if (key) found[key] = word;
    else if (rest) others.push(word);
    else return { wrong: none(word, keys, list, item, record) };
  }
  return { line: { ...found, ...(rest && others.length > 0 ? { [rest]: others.join(' ') } : {}) } as Keys };
}

function isOne(key: string, word: string, list: string, item: Shape, record: CarRecord): boolean {
  if (key === 'part' && list === 'hours' && /^[^/]+\/[^/]+$/.test(word)) return true;
  return key !== 'time' && knownFor(key, list, item, record).includes(word);
}

/** What a word for a key may be: names of the record, or the words of the schema. */
function knownFor(key: string, list: string, item: Shape, record: CarRecord): string[] {
  const refers = refersTo(list, key);
  if (refers) return [...(knownNames(refers, record) ?? [])];
  const inner = item && bare(item);
  if (key === 'kind') {
    return (inner?.options ?? []).flatMap((option) => said(bare(option).shape?.kind).examples ?? []);
  }
  const field = within(item, key);
  const { entries = {} } = (field ? bare(field) : {}) as { entries?: Record<string, string> };
  return Object.values(entries);
}

const NAMES: Record<string, string> = {
  time: 'time',
  part: 'part',
  work: 'kind of work',
  by: 'person',
  kind: 'kind of measurement',
  state: '`before`, `trial` or `after`',
  now: 'kind of fabric',
};

function none(word: string, keys: readonly string[], list: string, item: Shape, record: CarRecord): string {
  const time = readMinutes(word);
  if (/^\d/.test(word) && keys.includes('time') && !time.ok) {
    return `Unexpected \`${word}\`, expected ${time.expected}.`;
  }
  const names = keys.map((key) => NAMES[key] ?? key);
  const known = keys.flatMap((key) => (key === 'time' ? [] : knownFor(key, list, item, record)));
  const mend = didYouMean(word, known) ?? 'Words of your own go behind a semicolon.';
  return `\`${word}\` is no ${names.slice(0, -1).join(', ')} or ${names.at(-1)}. ${mend}`;
}
