// The order of the passes: split, read the car first (every amount depends on its currency), read the rest by
// its schema, then check file against file. Nothing is thrown for a writer's mistake.
import type { z } from 'zod';
import { type Currency, currencyOf } from '../figures/currency.ts';
import { type Day, isDay } from '../figures/days.ts';
import type { Units } from '../figures/lengths.ts';
import { checks } from './checks/index.ts';
import { splitFrontMatter } from './front-matter.ts';
import { keptByWindows, LONGEST_NAME } from './id.ts';
import { type Problem, sorted } from './place.ts';
import { readSheet, type SheetsRead } from './read-sheet.ts';
import type { Car, CarRecord, Choice, Entry, IssuedStatement, Part, Shop, WrittenFile } from './record.ts';
import { carSheet } from './schema/car.ts';
import { choiceSheet } from './schema/choice.ts';
import { entrySheet } from './schema/entry.ts';
import { type Fields, inRecord } from './schema/fields.ts';
import { partSheet } from './schema/part.ts';
import { shopSheet } from './schema/shop.ts';
import { statementSheet } from './schema/statement.ts';

/** A record as far as it could be read, all its problems, and the count of what was read. */
export type Opened = { record?: CarRecord; problems: Problem[]; read: Counts };
export type Counts = {
  entries: number;
  parts: number;
  choices: number;
  vendors: number;
  bills: number;
  photos: number;
};

/**
 * Opens a record from its texts. `today` only serves to notice dates in the future. Who opens a record again and again
 * gives the same `read` each time, from `sheetsRead()`: a text that hasn’t changed since isn’t read anew. The checks run
 * over all of it each time.
 */
export function openRecord(from: {
  files: readonly WrittenFile[];
  photos: readonly string[];
  today: Day;
  read?: SheetsRead;
}): Opened {
  const problems: Problem[] = [];
  const files = [...from.files].sort((a, b) => (a.file < b.file ? -1 : 1));
  const { currency, units } = moneyAndUnits(files);
  const schemas = sheets(currency, units);
  const kept = <T>(kind: string, schema: z.ZodType, more: (file: string) => object) =>
    files
      .filter((written) => kindOf(written.file) === kind)
      .flatMap((written) => {
        const { sheet, problems: found } = (from.read ?? readSheet)(written, schema);
        for (const problem of found) problems.push(problem);
        return sheet ? [{ ...sheet, ...more(written.file) } as T] : [];
      });
  for (const { file } of files) if (kindOf(file) === undefined) problems.push(misplaced(file));
  const [car] = kept<Car>('car', schemas.car, () => ({}));
  const [shop] = kept<Shop>('shop', schemas.shop, () => ({}));
  const parts = kept<Part>('part', schemas.part, (file) => ({ id: idOf(file) }));
  const choices = kept<Choice>('choice', schemas.choice, (file) => ({ id: idOf(file) }));
  const entries = kept<Entry>('entry', schemas.entry, (file) => ({
    id: idOf(file),
    day: idOf(file).slice(0, 10),
  }));
  entries.sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const statements = kept<IssuedStatement>('statement', schemas.statement, (file) => ({ id: idOf(file) }));
  statements.sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
  for (const file of ['car.md', 'shop.md']) {
    if (!files.some((written) => written.file === file)) problems.push(absent(file));
  }
  const photos = [...from.photos].sort();
  const read: Counts = {
    entries: entries.length,
    parts: parts.length,
    choices: choices.length,
    vendors: shop?.vendors?.length ?? 0,
    bills: billCount(entries),
    photos: photos.length,
  };
  if (!car || !shop) return { problems: sorted(problems), read };
  const record: CarRecord = {
    car,
    shop,
    parts,
    choices,
    entries,
    statements,
    photos,
    currency,
    units: units ?? 'inch',
    unread: unread(files, [car, shop, ...parts, ...choices, ...entries, ...statements]),
  };
  const everyEntry = ![...record.unread].some((file) => kindOf(file) === 'entry');
  for (const { rule, severity, needsEveryEntry, run } of checks) {
    if (needsEveryEntry && !everyEntry) continue;
    for (const found of run(record, { today: from.today })) problems.push({ rule, severity, ...found });
  }
  return { record, problems: sorted(problems), read };
}

/** What a file is, by where it lies in the folder. */
export function kindOf(file: string): 'car' | 'shop' | 'part' | 'choice' | 'entry' | 'statement' | undefined {
  if (file.split('/').some((name) => keptByWindows(name) || name.length > LONGEST_NAME)) return undefined;
  if (file === 'car.md') return 'car';
  if (file === 'shop.md') return 'shop';
  if (/^parts\/[a-z0-9]+(-[a-z0-9]+)*\.md$/.test(file)) return 'part';
  if (/^choices\/[a-z0-9]+(-[a-z0-9]+)*\.md$/.test(file)) return 'choice';
  if (/^log\/(?:[^/]+\/)*\d{4}-\d{2}-\d{2}(?:-[b-z])?\.md$/.test(file) && isDay(idOf(file).slice(0, 10)))
    return 'entry';
  if (/^statements\/[a-z0-9]+(-[a-z0-9]+)*\.md$/.test(file)) return 'statement';
  return undefined;
}

const built = new Map<string, ReturnType<typeof buildSheets>>();
function sheets(currency: Currency, units: Units | undefined) {
  const key = `${currency.code} ${units}`;
  const known = built.get(key) ?? buildSheets(inRecord(currency, units));
  built.set(key, known);
  return known;
}
const buildSheets = (f: Fields) => ({
  car: carSheet(f),
  shop: shopSheet(f),
  part: partSheet(f),
  choice: choiceSheet(f),
  entry: entrySheet(f),
  statement: statementSheet(f),
});

function moneyAndUnits(files: readonly WrittenFile[]): { currency: Currency; units: Units | undefined } {
  const car = files.find(({ file }) => file === 'car.md');
  const values = car ? splitFrontMatter(car.file, car.text).values : {};
  const currency = typeof values.currency === 'string' ? currencyOf(values.currency.trim()) : undefined;
  const units = values.units === 'inch' || values.units === 'mm' ? values.units : undefined;
  return { currency: currency ?? { code: 'USD', digits: 2, sign: '$' }, units };
}

function billCount(entries: readonly Entry[]): number {
  return entries.reduce((sum, { bought = [], outside = [] }) => sum + bought.length + outside.length, 0);
}

/** Files of the record's shapes that weren't read whole, so that what names them isn't called unknown. */
function unread(
  files: readonly WrittenFile[],
  read: readonly { file: string; whole: boolean }[],
): Set<string> {
  const known = new Set(read.filter(({ whole }) => whole).map(({ file }) => file));
  return new Set(
    files.map(({ file }) => file).filter((file) => kindOf(file) !== undefined && !known.has(file)),
  );
}

const idOf = (file: string) => file.slice(file.lastIndexOf('/') + 1).replace(/\.md$/, '');

function misplaced(file: string): Problem {
  const kept = file.split('/').find(keptByWindows);
  const about = { rule: 'file-name', severity: 'error', place: { file, line: 1, column: 1 } } as const;
  if (kept !== undefined) {
    return {
      ...about,
      reason: `\`${kept}\` is a name that Windows keeps for itself, so \`${file}\` isn’t read.`,
      mend: 'Give it another name: the record may be copied to such a machine.',
    };
  }
  if (file.split('/').some((name) => name.length > LONGEST_NAME)) {
    return {
      ...about,
      reason: `\`${file}\` isn’t read: a name in it is longer than ${LONGEST_NAME} letters.`,
      mend: 'Give it a shorter name.',
    };
  }
  return {
    ...about,
    reason: `\`${file}\` is no file of a record.`,
    mend: file.startsWith('log/')
      ? 'Name a day’s entry by its date, such as `log/2025-04-16.md`, a second one that day `log/2025-04-16-b.md`.'
      : 'A record holds car.md, shop.md, parts/<part>.md, choices/<choice>.md, log/<date>.md and statements/<number>.md, in lower case with hyphens.',
  };
}

function absent(file: string): Problem {
  return {
    rule: 'file-missing',
    severity: 'error',
    place: { file, line: 1, column: 1 },
    reason: `\`${file}\` is missing.`,
    mend: 'Every record has one; `npm run new -- <folder>` shows how it looks.',
  };
}
