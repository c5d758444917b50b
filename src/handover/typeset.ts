// Sets plain data in type: the sheets that lie in book/ and sheets/, their fonts and the pictures go in, a PDF comes
// out, and nothing is read from outside.
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { Day } from '../figures/days.ts';
import type { Units } from '../figures/lengths.ts';
import { inLetters, lettersOf } from './book/letters.ts';

/** Each file follows one standard: a printer's file may claim one alone. */
export const EDITIONS = {
  archive: { standard: 'a-2a', says: 'This edition is made to be kept (PDF/A-2a, ISO 19005-2).' },
  reading: { standard: 'ua-1', says: 'This edition is made to be read aloud (PDF/UA-1, ISO 14289-1).' },
} as const;
export type Edition = keyof typeof EDITIONS;

export const isEdition = (word: string): word is Edition => Object.hasOwn(EDITIONS, word);

/** A printed file, and the letters that its fonts haven't, which are printed as numbers. */
export type Printed = { pdf: Buffer; missing: string[] };

/** How something is printed. `made` is the day that the file carries. */
export type Press = { edition: Edition; units: Units; made: Day };

/** What is printed: the kind is the file's keyword, by which a later run knows its own. */
export const KINDS = {
  book: { main: 'book/book.typ', keyword: 'Ashframe book' },
  statement: { main: 'sheets/statement.typ', keyword: 'Ashframe statement' },
  choice: { main: 'sheets/choice.typ', keyword: 'Ashframe choice sheet' },
} as const;
export type Kind = keyof typeof KINDS;

/** Where the printer believes its files to lie; nothing is read from there. */
const DESK = '/press';

/**
 * Prints data. `pictures` are JPEGs by the names that the data gives them (`asJpeg`). What the sheets read besides the
 * data: the paper of the record's country, the day in figures, the edition in words and the keyword. Throws when the
 * printer finds a fault, also one against the standard of the edition.
 */
export async function typeset(
  kind: Kind,
  data: object,
  pictures: ReadonlyMap<string, Uint8Array>,
  { edition, units, made }: Press,
): Promise<Printed> {
  const fonts = await filesIn('book/fonts', /\.ttf$/);
  const compiler = NodeCompiler.create({ workspace: DESK, fontArgs: [{ fontBlobs: [...fonts.values()] }] });
  for (const folder of ['book', 'sheets']) {
    for (const [name, bytes] of await filesIn(folder, /\.typ$/))
      compiler.mapShadow(`${DESK}/${folder}/${name}`, bytes);
  }
  const { main, keyword } = KINDS[kind];
  const [folder] = main.split('/');
  for (const [name, bytes] of pictures) compiler.mapShadow(`${DESK}/${folder}/${name}`, Buffer.from(bytes));
  const [year, month, day] = made.split('-').map(Number);
  const press = {
    on: { year, month, day },
    edition: EDITIONS[edition].says,
    paper: units === 'inch' ? 'us-letter' : 'a4',
    keyword,
  };
  const { data: set, missing } = inLetters({ ...data, press }, lettersOf(textFonts(fonts)));
  const json = JSON.stringify(set, (_, value) => value ?? null);
  compiler.mapShadow(`${DESK}/${folder}/data.json`, Buffer.from(json));
  try {
    const compiled = compiler.compile({ mainFilePath: `${DESK}/${main}` });
    const { result } = compiled;
    const told = compiled.takeDiagnostics();
    if (told || !result) throw new Error(faultText(kind, told ? compiler.fetchDiagnostics(told) : []));
    return { pdf: compiler.pdf(result, { pdfStandard: EDITIONS[edition].standard }), missing };
  } finally {
    compiler.evictCache(0);
  }
}

/** The name that a web picture has in print. */
export const asJpeg = (file: string) => file.replace(/\.\w+$/, '.jpg');

/** The fonts that every letter must be in: what the serif of the headings hasn't is set in these. */
function textFonts(fonts: ReadonlyMap<string, Buffer>): Buffer[] {
  return [...fonts].filter(([name]) => name.startsWith('source-sans')).map(([, font]) => font);
}

/** A fault in the sheets is a bug of ours: it is thrown with its file and line. */
function faultText(
  kind: Kind,
  faults: { message?: string; path?: string; range?: { start?: { line?: number } } }[],
): string {
  const [first] = faults;
  const path = (first?.path ?? '').replace(DESK, '');
  return `The ${kind} wasn’t set: ${path}:${(first?.range?.start?.line ?? 0) + 1} ${first?.message ?? ''}`;
}

async function filesIn(folder: string, like: RegExp): Promise<Map<string, Buffer>> {
  const place = new URL(`./${folder}/`, import.meta.url);
  const names = (await readdir(place)).filter((name) => like.test(name)).sort();
  const files = names.map(
    async (name): Promise<[string, Buffer]> => [name, await readFile(fileURLToPath(new URL(name, place)))],
  );
  return new Map(await Promise.all(files));
}
