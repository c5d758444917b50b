// Every question of the log as a flag: what each list of an entry takes, and how it is said.
import type { CarRecord } from '../../record/record.ts';
import { type Added, isNothing } from '../../record/writing/add-to-entry.ts';
import type { Value } from '../../record/writing/edit.ts';
import { LEADS } from '../../record/writing/leads.ts';
import { lineFromWords, namesFromWords } from '../../record/writing/line-from-words.ts';
import { lineProblems } from '../../record/writing/line-problems.ts';

const many = { type: 'string', multiple: true } as const;
const LISTS = Object.keys(LEADS);

/** The flags that hold something to write, for the reader of a command’s words. */
export const contentFlags = {
  by: { type: 'string' },
  ...Object.fromEntries(LISTS.map((list) => [list, many])),
  finished: many,
  'shop-only': many,
  words: many,
} as const;

type Given = Readonly<Record<string, string | boolean | (string | boolean)[] | undefined>>;

/** What the flags say, or a sentence for each that isn’t understood. */
export function addedByFlags(given: Given, record: CarRecord): { added: Added } | { wrong: string[] } {
  const wrong: string[] = [];
  const lists: Record<string, Value[]> = {};
  const take = (list: string, line: Value, at: number) => {
    const found = lineProblems(list, line, record);
    wrong.push(...found.map((sentence) => `${place(list, at, said(given[list]).length)} ${sentence}`));
    lists[list] = [...(lists[list] ?? []), line];
  };
  for (const list of LISTS) {
    for (const [at, words] of said(given[list]).entries()) {
      const read = lineFromWords(list, words, record);
      if ('wrong' in read) wrong.push(`${place(list, at, said(given[list]).length)} ${read.wrong}`);
      else take(list, read.line, at);
    }
  }
  for (const words of said(given.finished))
    for (const name of namesFromWords(words)) take('finished', name, 0);
  for (const [at, words] of said(given['shop-only']).entries()) take('shop-only', words, at);
  const [by] = said(given.by);
  if (by !== undefined) {
    const people = record.shop.people.map(({ id }) => id);
    if (!people.includes(by))
      wrong.push(`--by: \`${by}\` is no person in shop.md. Known: ${people.join(', ')}.`);
  }
  const words = said(given.words).join('\n\n');
  if (wrong.length > 0) return { wrong };
  return { added: { lists, ...(by === undefined ? {} : { by }), ...(words === '' ? {} : { words }) } };
}

/** True when no flag says anything to write. */
export function saysNothing(given: Given): boolean {
  return isNothing({
    lists: Object.fromEntries([...LISTS, 'finished', 'shop-only'].map((list) => [list, said(given[list])])),
    words: said(given.words).join(''),
  });
}

const said = (value: Given[string]): string[] =>
  (Array.isArray(value) ? value : [value]).filter((one): one is string => typeof one === 'string');

const place = (list: string, at: number, of: number) =>
  of > 1 ? `--${list}, number ${at + 1}:` : `--${list}:`;

/** The flags as they are shown by --help. */
export function flagsText(): string {
  const row = (flag: string, example: string) => `  --${flag.padEnd(10)} "${example}"`;
  return [
    ...LISTS.map((list) => row(list, LEADS[list]?.example ?? '')),
    row('finished', 'cowl/strip springs/strip'),
    row('shop-only', 'quote the next one higher'),
    row('words', 'The day in words.'),
    row('by', 'tobias'),
  ].join('\n');
}
