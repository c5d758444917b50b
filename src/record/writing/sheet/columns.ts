// Which column of a sheet is which key of a line: hours, or a vendor’s bills.
import { nearest } from '../../nearest.ts';
import { sheets } from '../../schema/sheets.ts';
import { shortSentence } from '../../short.ts';
import { keyOrder, within } from '../key-order.ts';

/** What a sheet holds. Bills go to `bought`, or to `outside` where a column `as` says so. */
export type SheetKind = 'hours' | 'bills';

/** For each column, the key that it is; nothing for one that is left out. */
export type Columns = { kind: SheetKind; keys: (string | undefined)[]; leftOut: string[] };

const listOf = { hours: 'hours', bills: 'bought' } as const;
const NEEDED = { hours: ['date', 'work', 'time'], bills: ['date', 'what', 'from', 'price'] } as const;

/** Other words that a heading may have for a key. */
const OTHER_WORDS: Readonly<Record<string, string>> = {
  day: 'date',
  vendor: 'from',
  person: 'by',
  hours: 'time',
};

/** The keys that columns of a kind of sheet may be, `date` first. */
export function keysOfSheet(kind: SheetKind): string[] {
  const keys = keyOrder(within(within(sheets.entry, listOf[kind]), 0), {}).filter((key) => key !== 'place');
  return ['date', ...(kind === 'bills' ? ['as'] : []), ...keys];
}

/** The key that a heading names by itself. */
export function keyOfHeading(heading: string, kind: SheetKind): string | undefined {
  const word = heading
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');
  const key = OTHER_WORDS[word] ?? word;
  return keysOfSheet(kind).includes(key) ? key : undefined;
}

/**
 * Reads the heading of a sheet. `named` gives keys to headings that don’t name one by themselves; `-` leaves a column
 * out. A sentence when the sheet can’t be told, lacks a column, or has one twice.
 */
export function readColumns(
  headings: readonly string[],
  named: ReadonlyMap<string, string>,
): Columns | string {
  const read = columnsOf(headings, named);
  return typeof read === 'string' ? shortSentence(read) : read;
}

function columnsOf(headings: readonly string[], named: ReadonlyMap<string, string>): Columns | string {
  const strange = [...named.keys()].find((heading) => !headings.includes(heading));
  if (strange !== undefined) return noSuchColumn(strange, headings);
  const kind = kindOf(headings, named);
  if (typeof kind !== 'object') return kind;
  const known = keysOfSheet(kind.kind);
  const wrong = [...named.values()].find((key) => key !== '-' && !known.includes(key));
  if (wrong !== undefined) {
    return `\`${wrong}\` is no column of ${kind.kind}. Known: ${known.map((key) => `\`${key}\``).join(', ')}.`;
  }
  const keys = headings.map((heading) => keyFor(heading, kind.kind, named));
  const missing = NEEDED[kind.kind].find((key) => !keys.includes(key));
  if (missing !== undefined) {
    const all = headings.map((heading) => `\`${heading}\``).join(', ');
    return `A sheet of ${kind.kind} needs a column \`${missing}\`, and this one has ${all}. Say which it is: --columns "${headings.find((_, i) => keys[i] === undefined) ?? 'Heading'}=${missing}".`;
  }
  const twice = keys.find((key, i) => key !== undefined && keys.indexOf(key) !== i);
  if (twice !== undefined) return `Two columns are \`${twice}\`. Leave one out: --columns "Heading=-".`;
  return { kind: kind.kind, keys, leftOut: headings.filter((_, i) => keys[i] === undefined) };
}

function keyFor(heading: string, kind: SheetKind, named: ReadonlyMap<string, string>): string | undefined {
  const said = named.get(heading);
  return said === '-' ? undefined : (said ?? keyOfHeading(heading, kind));
}

/** Hours have a time, bills a price. */
function kindOf(
  headings: readonly string[],
  named: ReadonlyMap<string, string>,
): { kind: SheetKind } | string {
  const has = (kind: SheetKind, key: string) =>
    headings.some((heading) => keyFor(heading, kind, named) === key);
  const [hours, bills] = [has('hours', 'time'), has('bills', 'price')];
  if (hours && bills) return 'This sheet has a `time` and a `price`: bring hours and bills apart.';
  if (hours) return { kind: 'hours' };
  if (bills) return { kind: 'bills' };
  const all = headings.map((heading) => `\`${heading}\``).join(', ');
  return `A sheet of hours needs a column \`time\`, one of bills a column \`price\`; this one has ${all}. Say which it is: --columns "Heading=time".`;
}

function noSuchColumn(heading: string, headings: readonly string[]): string {
  const near = nearest(heading, headings);
  return `The sheet has no column \`${heading}\`.${near === undefined ? '' : ` Did you mean \`${near}\`?`}`;
}
