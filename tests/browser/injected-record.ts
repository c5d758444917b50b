// A record in which every field that takes words holds markup. It is made from the schemas, so that a field that is added
// to them is tried as well.
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { parse } from 'yaml';
import type { z } from 'zod';
import type { Refers } from '../../src/record/schema/fields.ts';
import { sheets } from '../../src/record/schema/sheets.ts';
import { bare, said } from '../../src/record/schema-at.ts';
import { MARKDOWN_MARKUP, MARKUP, share } from '../bad-input/markup.ts';

type Kind = keyof typeof sheets;
type Values = Record<string, unknown>;

/** Parts, choices and days, each with its share of the markup. */
const FILES = 6;
/** A name that a disk takes and that a page mustn’t: it has no `/`. */
const PICTURE = `" onerror="hit()"><img src=x onerror=hit()>&lt;.jpg`;
const day = (k: number) => `2025-03-0${k + 3}`;

/** Heights want four corners or three points. */
const CORNERS = { corners: ['0 in', '1/16 in', '0 in', '0 in'], points: undefined };

const WORDS: Record<Refers, (k: number) => string> = {
  part: (k) => `part-${k}`,
  line: (k) => `part-${k}/lower-edge`,
  vendor: () => 'millrace',
  person: () => 'tobias',
  choice: (k) => `choice-${k}`,
  work: () => 'metal',
  photo: (k) => `photos/${day(k)}/${PICTURE}`,
};

/** All texts of the record by file, and its pictures. */
export async function injectedRecord(): Promise<Map<string, string | Buffer>> {
  const all = MARKUP.join(' ');
  const files = new Map<string, string | Buffer>([
    ['car.md', file('car', all, 0, { opened: '2025-02-03', closed: undefined })],
    ['shop.md', file('shop', all, 0)],
  ]);
  for (let k = 0; k < FILES; k++) {
    const words = share(MARKUP, k, FILES).join(' ');
    files.set(`parts/part-${k}.md`, file('part', words, k));
    files.set(`choices/choice-${k}.md`, file('choice', words, k, choiceOf(words, k)));
    files.set(`log/${day(k)}.md`, file('entry', words, k, entryOf(words, k)));
    files.set(`photos/${day(k)}/${PICTURE}`, await picture(words));
  }
  return files;
}

/** Writes it into a folder. */
export async function writeInjected(folder: string): Promise<void> {
  for (const [name, what] of await injectedRecord()) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), what);
  }
}

/** A line of work has work and hours, a thing to buy a price; there are two options. */
function choiceOf(words: string, k: number): Values {
  const [option = {}] = (filled(sheets.choice, words, k) as { options: Values[] }).options;
  const { lines: _, ...plain } = option;
  const lines = [
    { do: words, work: 'metal', hours: ['1', '2', '3'] },
    { buy: words, price: '10', from: 'millrace' },
  ];
  return {
    part: WORDS.part(k),
    asked: day(0),
    options: [
      { ...plain, option: 'repair', way: 'repair', lines },
      { ...plain, option: 'other', way: 'new-made', lines },
    ],
    // Of three choices one is open, one decided, one dropped.
    decided: k % 3 === 1 ? { option: 'repair', on: day(k), by: words, reason: words } : undefined,
    withdrawn: k % 3 === 2 ? { on: day(k), reason: words } : undefined,
  };
}

/** What must agree with another line: what came was ordered, what goes back was bought. */
function entryOf(words: string, k: number): Values {
  const drawn = filled(sheets.entry, words, k) as { measured: Values[]; marks: Values[]; pads: Values[] };
  const goods = { what: words, from: 'millrace', price: '10', bill: `${words} ${k}` };
  return {
    bought: [{ ...goods, deposit: '5', part: WORDS.part(k) }],
    outside: [{ ...goods, bill: `outside ${words}` }],
    returned: [{ ...goods, deposit: '5' }],
    finished: undefined,
    pads: drawn.pads.map((pad) => ({ ...pad, mount: 'L1' })),
    marks: drawn.marks.map((mark) => ({ ...mark, photo: PICTURE })),
    measured: drawn.measured.map((one) => (one.kind === 'heights' ? { ...one, ...CORNERS } : one)),
    fabric: [{ part: WORDS.part(k), now: 'original', note: words }],
    photos: [
      { file: PICTURE, caption: words, alt: words, part: WORDS.part(k), shows: 'before', pair: words },
    ],
  };
}

function file(kind: Kind, words: string, k: number, instead: Values = {}): string {
  const values = { ...(filled(sheets[kind], words, k) as Values), ...instead };
  const body = kind === 'car' || kind === 'shop' ? MARKDOWN_MARKUP : share(MARKDOWN_MARKUP, k, FILES);
  // JSON is YAML; strings in quotes are read as they stand.
  return `---\n${JSON.stringify(values, null, 1)}\n---\n\n${body.join('\n\n')}\n`;
}

/** A value that a schema takes: markup where it takes words, its own example where it must have something else. */
function filled(schema: z.ZodType, words: string, k: number): unknown {
  const inner = bare(schema);
  const { refers } = refersOf(schema);
  if (refers) return WORDS[refers as Refers](k);
  if (inner.shape) {
    const keys = Object.entries(inner.shape).filter(([key, field]) => key !== 'place' && isWanted(field));
    return Object.fromEntries(keys.map(([key, field]) => [key, filled(field, words, k)]));
  }
  if (inner.type === 'record') return { [words]: words };
  if (takesWords(schema)) return words;
  if (inner.element) {
    const options = bare(inner.element).options?.filter((option) => bare(option).shape);
    const list = (options ?? [inner.element]).map((each) => filled(each, words, k));
    // A list of so many figures, or of so many names, has its own example.
    return bare(inner.element).shape || options || schema.safeParse(list).success ? list : example(schema);
  }
  const own = inner.options?.find((option) => bare(option).shape);
  return own ? filled(own, words, k) : example(schema);
}

/** A field that must be there, names something, or has words in it. */
function isWanted(field: z.ZodType): boolean {
  return !field.safeParse(undefined).success || refersOf(field).refers !== undefined || holdsWords(field);
}

function holdsWords(schema: z.ZodType): boolean {
  const { shape, element, options, type } = bare(schema);
  if (type === 'record' || takesWords(schema)) return true;
  const fields = Object.entries(shape ?? {}).flatMap(([key, field]) => (key === 'place' ? [] : [field]));
  const within = [...fields, ...(element ? [element] : []), ...(options ?? [])];
  return within.some((one) => !refersOf(one).refers && holdsWords(one));
}

/** The names of all fields that take words, such as `entry hours note`. */
export function wordFields(schema: z.ZodType, name: string): string[] {
  const { shape, element, options, type } = bare(schema);
  if (refersOf(schema).refers) return [];
  if (type === 'record' || takesWords(schema)) return [name];
  const fields = Object.entries(shape ?? {}).flatMap(([key, field]) =>
    key === 'place' ? [] : wordFields(field, `${name} ${key}`),
  );
  const within = [...(element ? [element] : []), ...(options ?? [])];
  return [...new Set([...fields, ...within.flatMap((one) => wordFields(one, name))])];
}

/** True of a field that takes any words, be it a text or a list of them: it isn’t read into a figure, a day or an id. */
export function takesWords(schema: z.ZodType): boolean {
  const read = schema.safeParse('<b> "x"');
  return read.success && JSON.stringify(read.data).includes(JSON.stringify('<b> "x"'));
}

function refersOf(schema: z.ZodType): { refers?: string } {
  const { refers } = said(schema) as { refers?: string };
  const inner = (schema.def as unknown as { innerType?: z.ZodType }).innerType;
  return refers ? { refers } : inner ? refersOf(inner) : {};
}

/** The field’s own example, every scalar as it is written. */
function example(schema: z.ZodType): unknown {
  const [written = ''] = said(schema).examples ?? [];
  return parse(written, { schema: 'failsafe' });
}

/** A picture whose camera wrote markup into it. */
async function picture(words: string): Promise<Buffer> {
  const said = words.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return sharp({ create: { width: 640, height: 480, channels: 3, background: '#7f9887' } })
    .withExif({ IFD0: { Artist: words, ImageDescription: words, Copyright: words } })
    .withXmp(
      `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description>${said}</rdf:Description></rdf:RDF></x:xmpmeta>`,
    )
    .jpeg()
    .toBuffer();
}
