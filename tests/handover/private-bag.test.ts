// What must not leave the shop, looked for in every byte of a hand-over: names, texts, tables, pages, the index of the
// search, pictures, and both books with all that is packed in them.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { emptyFolderFor, npmRun } from '../commands/run.ts';
import {
  CAMERA_WORD,
  OWNER_AMOUNTS,
  OWNER_WORD,
  PRIVATE,
  SHOP_AMOUNTS,
  SHOP_WORD,
} from '../record/private.ts';
import { writePrivate } from '../record/private-folder.ts';
import { openedUp, wordsOf } from './pdf.ts';

/** Texts with the shop's words in comments, and pictures whose names alone say something. */
const entry = PRIVATE['log/2025-04-07.md'].replace(
  'by: ines\n',
  `# ${SHOP_WORD} in a comment\nby: ines # ${SHOP_WORD} behind a value\n`,
);
const MORE = {
  'log/2025-04-07.md': `${entry}\n[//]: # (${SHOP_WORD} written as a link)\n\n![](${CAMERA_WORD}-2.jpg)\n`,
};
const UNNAMED = [`photos/2025-04-07/${SHOP_WORD}-customer.jpg`, `photos/${SHOP_WORD}/IMG_1.jpg`];

type Bag = { files: Map<string, string>; said: string };
const bags = new Map<string, Bag>();
const folders: { folder: string; remove: () => Promise<void> }[] = [];

beforeAll(async () => {
  const record = await emptyFolderFor('record');
  folders.push(record);
  await writePrivate(record.folder, { more: MORE, photos: UNNAMED });
  const ways = { plain: [], full: ['--originals', '--yes', '--costs'] };
  for (const [way, flags] of Object.entries(ways)) {
    const out = await emptyFolderFor('bag');
    folders.push(out);
    const { code, err } = await npmRun('handover', [out.folder, ...flags], record.folder);
    if (code !== 0) throw new Error(err);
    bags.set(way, { files: await bytesOf(out.folder), said: err });
  }
}, 240_000);
afterAll(async () => {
  for (const { remove } of folders) await remove();
});

/** Each file of a folder as text, one letter an octet and once more as UTF-8; of a book also its words and what is packed. */
async function bytesOf(folder: string): Promise<Map<string, string>> {
  const found = new Map<string, string>();
  for (const file of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!statSync(join(folder, file)).isFile()) continue;
    const bytes = readFileSync(join(folder, file));
    const all = `${file}\n${bytes.toString('latin1')}\n${bytes.toString('utf8')}`;
    const book = file.endsWith('.pdf') ? (await wordsOf(bytes)).words : undefined;
    if (book === undefined) found.set(file, all);
    else {
      found.set(file, `${all}\n${openedUp(bytes)}\n${book}`);
      found.set(wordsIn(file), book);
    }
  }
  return found;
}

/** The words of a book apart from what is packed in it, where figures say where words stand on the page. */
const wordsIn = (file: string) => `${file}: words`;

const filesWith = (way: string, text: string) =>
  [...(bags.get(way)?.files ?? [])].filter(([, bytes]) => bytes.includes(text)).map(([file]) => file);

/** An amount as a text has it, as a page does with its comma, and in minor units where it can be told from other figures. */
function writtenAs(amount: string): string[] {
  const [whole = '', cents] = amount.split('.');
  const shown = `${whole.replace(/(?=(?:\d{3})+$)(?!^)/g, ',')}${cents ? `.${cents}` : ''}`;
  const minor = `${whole}${cents ?? '00'}`;
  return [...new Set([amount, shown, ...(minor.length > 5 ? [minor] : [])])].filter(
    (text) => text.length > 4,
  );
}

describe.each(['plain', 'full'])('a hand-over made %s', (way) => {
  it('holds what is looked through', () => {
    const files = [...(bags.get(way)?.files.keys() ?? [])];
    for (const kind of [
      'data/site/index.html',
      'data/record/log/2025-04-07.md',
      'data/record/photos/2025-04-07/2025-04-07-2.jpg',
      'data/tables/bought.csv',
      'data/book/book.pdf',
      wordsIn('data/book/book-to-be-read-aloud.pdf'),
      'HOW-TO-READ.txt',
    ])
      expect(files).toContain(kind);
    // Words that everybody may see are found by the same looking, also in a book.
    const told = filesWith(way, 'The old metal is too thin.');
    for (const file of [
      'data/record/choices/corners.md',
      'data/site/choice/corners.html',
      wordsIn('data/book/book.pdf'),
    ])
      expect(told).toContain(file);
  });

  it('names what an option would buy, in texts, on pages and in the book', () => {
    const named = filesWith(way, 'Sheet steel');
    for (const file of [
      'data/record/choices/corners.md',
      'data/site/choice/corners.html',
      wordsIn('data/book/book.pdf'),
    ])
      expect(named).toContain(file);
  });

  it('holds no word of the shop’s or the owner’s fields, of comments and remarks', () => {
    for (const word of [SHOP_WORD, OWNER_WORD]) expect([word, filesWith(way, word)]).toEqual([word, []]);
  });

  it('holds no amount of a line', () => {
    for (const amount of [...OWNER_AMOUNTS, ...SHOP_AMOUNTS].flatMap(writtenAs)) {
      const found = filesWith(way, amount).filter((file) => !file.endsWith('.pdf'));
      expect([amount, found]).toEqual([amount, []]);
    }
  });

  it('names no picture as the camera did', () => {
    expect(filesWith(way, `${CAMERA_WORD}-`)).toEqual([]);
    const pictures = [...(bags.get(way)?.files.keys() ?? [])].filter((file) => /record\/photos\//.test(file));
    expect(pictures.sort()).toEqual([
      'data/record/photos/2025-03-03/2025-03-03-1.jpg',
      'data/record/photos/2025-04-07/2025-04-07-1.jpg',
      'data/record/photos/2025-04-07/2025-04-07-2.jpg',
    ]);
  });
});

describe('what a camera wrote', () => {
  it('is in no byte of a hand-over', () => {
    expect(filesWith('plain', CAMERA_WORD)).toEqual([]);
    expect(filesWith('plain', 'Exif\0\0')).toEqual([]);
  });

  it('is told of and goes along with the camera’s own files alone, when they are asked for', () => {
    expect(bags.get('full')?.said).toContain('3 carry the place (GPS)');
    expect(bags.get('full')?.said).toContain('3 carry a person’s name');
    const with3 = filesWith('full', CAMERA_WORD);
    expect(with3.length).toBe(3);
    expect(with3.every((file) => file.startsWith('data/record/photos/'))).toBe(true);
  });
});

describe('what the work came to', () => {
  const SUMS = ['data/book/book-to-be-read-aloud.pdf', 'data/book/book.pdf', 'data/site/came-to.html'];

  it('is in no file unless it is asked for', () => {
    expect(filesWith('plain', 'What it came to')).toEqual([]);
    expect([...(bags.get('plain')?.files.keys() ?? [])]).not.toContain('data/tables/totals.csv');
    // A dollar sign is in no text, no page and no table.
    const texts = [...(bags.get('plain')?.files ?? [])].filter(([file]) => /\.(md|html|csv|txt)$/.test(file));
    expect(texts.filter(([, text]) => /\$\s?\d/.test(text)).map(([file]) => file)).toEqual([]);
  });

  it('is in the book, on a page and in a table when it is', () => {
    const found = filesWith('full', 'The work came to $').filter((file) => !file.endsWith('words'));
    expect(found.sort()).toEqual(SUMS);
    const [, sum = ''] = /The work came to \$([\d,.]+) in all/.exec(
      bags.get('full')?.files.get('data/site/came-to.html') ?? '',
    ) ?? ['', ''];
    const totals = bags.get('full')?.files.get('data/tables/totals.csv') ?? '';
    expect(totals).toContain(`all,All,`);
    expect(totals).toMatch(new RegExp(`all,All,\\d+,${sum.replace(',', '').replace('.', '\\.')}\\r\\n`));
  });
});
