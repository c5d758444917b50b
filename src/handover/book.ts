// Prints the bound book: the data of views/book.ts, set by the sheets in book/, with fonts and pictures in it and
// nothing from outside.
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { Units } from '../figures/lengths.ts';
import type { BookData } from '../views/book.ts';
import { inLetters, lettersOf } from './book/letters.ts';

/** Each file follows one standard: a printer's file may claim one alone. */
export const EDITIONS = {
  archive: { standard: 'a-2a', says: 'This edition is made to be kept (PDF/A-2a, ISO 19005-2).' },
  reading: { standard: 'ua-1', says: 'This edition is made to be read aloud (PDF/UA-1, ISO 14289-1).' },
} as const;
export type Edition = keyof typeof EDITIONS;

/** Where the printer believes its files to lie; nothing is read from there. */
const DESK = '/book';

/** A printed book, and the letters that its fonts haven't, which are printed as numbers. */
export type Printed = { pdf: Buffer; missing: string[] };

/** Prints the book. `pictures` are JPEGs by the `file` of their plates. Throws when the printer finds a fault. */
export async function printBook(
  data: BookData,
  pictures: ReadonlyMap<string, Uint8Array>,
  { edition, units }: { edition: Edition; units: Units },
): Promise<Printed> {
  const sheets = new URL('./book/', import.meta.url);
  const fonts = await filesIn(new URL('fonts/', sheets), /\.ttf$/);
  const compiler = NodeCompiler.create({ workspace: DESK, fontArgs: [{ fontBlobs: [...fonts.values()] }] });
  for (const [name, bytes] of await filesIn(sheets, /\.typ$/)) compiler.mapShadow(`${DESK}/${name}`, bytes);
  for (const [name, bytes] of pictures) compiler.mapShadow(`${DESK}/${asJpeg(name)}`, Buffer.from(bytes));
  const { data: set, missing } = inLetters(forPrint(data, edition, units), lettersOf(textFonts(fonts)));
  const json = JSON.stringify(set, (_, value) => value ?? null);
  compiler.mapShadow(`${DESK}/data.json`, Buffer.from(json));
  try {
    const compiled = compiler.compile({ mainFilePath: `${DESK}/book.typ` });
    const { result } = compiled;
    const told = compiled.takeDiagnostics();
    if (told || !result) throw new Error(faultText(told ? compiler.fetchDiagnostics(told) : []));
    return { pdf: compiler.pdf(result, { pdfStandard: EDITIONS[edition].standard }), missing };
  } finally {
    compiler.evictCache(0);
  }
}

/** What the sheets read besides the data: the day in figures, the paper, and the names that go into the index. */
function forPrint(data: BookData, edition: Edition, units: Units) {
  const [year, month, day] = data.made.day.split('-').map(Number);
  return {
    ...data,
    made: { ...data.made, year, month, day },
    plates: data.plates.map((plate) => ({ ...plate, file: asJpeg(plate.file) })),
    edition: EDITIONS[edition].says,
    paper: units === 'inch' ? 'us-letter' : 'a4',
    parts: data.work.groups.flatMap(({ parts }) => parts.map(({ name }) => name)),
  };
}

/** The fonts that every letter must be in: what the serif of the headings hasn't is set in these. */
function textFonts(fonts: ReadonlyMap<string, Buffer>): Buffer[] {
  return [...fonts].filter(([name]) => name.startsWith('source-sans')).map(([, font]) => font);
}

const asJpeg = (file: string) => file.replace(/\.\w+$/, '.jpg');

/** A fault in the sheets is a bug of ours: it is thrown with its file and line. */
function faultText(
  faults: { message?: string; path?: string; range?: { start?: { line?: number } } }[],
): string {
  const [first] = faults;
  return `The book wasn’t set: ${first?.path ?? ''}:${(first?.range?.start?.line ?? 0) + 1} ${first?.message ?? ''}`;
}

async function filesIn(folder: URL, like: RegExp): Promise<Map<string, Buffer>> {
  const names = (await readdir(folder)).filter((name) => like.test(name)).sort();
  const files = names.map(
    async (name): Promise<[string, Buffer]> => [name, await readFile(fileURLToPath(new URL(name, folder)))],
  );
  return new Map(await Promise.all(files));
}
