import { beforeAll, describe, expect, it } from 'vitest';
import { type Edition, printBook } from '../../src/handover/book.ts';
import { bookData } from '../../src/views/book.ts';
import { aboutOf, openedUp, wordsOf } from './pdf.ts';
import { AMOUNTS, PLANTED, pictures, planted } from './planted.ts';

const SUM = '5891b5b522d5df086d0ff0b110fbd9d21bb4fc7163af34d08286a2e846f6be03';

const { record, rollup, photos } = planted();

function print(edition: Edition, asked: { costs?: boolean; sum?: string } = { sum: SUM }, of = record) {
  const data = bookData(of, rollup, photos, { made: '2026-05-29', ...asked });
  return printBook(data, pictures(), { edition, units: 'inch' });
}

describe.each(['archive', 'reading'] as const)('the %s edition of the book', (edition) => {
  let pdf: Buffer;
  let words: string;
  let pages: number;

  beforeAll(async () => {
    // The printer throws at the first thing that the edition's standard doesn't allow.
    const printed = await print(edition);
    expect(printed.missing).toEqual([]);
    pdf = printed.pdf;
    ({ words, pages } = await wordsOf(pdf));
  });

  it('claims the standard that it was made to', () => {
    const file = openedUp(pdf);
    // ISO 19005-2, 6.6.4; ISO 14289-1, 5.
    const claims = {
      archive: ['<pdfaid:part>2</pdfaid:part>', '<pdfaid:conformance>A<'],
      reading: ['<pdfuaid:part>1<', '/DisplayDocTitle true'],
    };
    for (const claim of claims[edition]) expect(file).toContain(claim);
    // Tagged, and in a language: the ground of both.
    for (const mark of ['/Marked true', '/StructTreeRoot', '/Lang']) expect(file).toContain(mark);
  });

  it('is headed by the car and the day', async () => {
    expect(await aboutOf(pdf)).toMatchObject({
      Title: 'Aldermere Fourteen: the record of its restoration',
      Author: 'Harrow Bend Coachworks, Harrow Bend',
      CreationDate: expect.stringContaining('20260529'),
    });
  });

  it('holds every chapter and every part, with the pages of each in the index', () => {
    const chapters = [
      'The car',
      'How it was found',
      'What was decided, and why',
      'The work, by part',
      'Measurements, before and after',
      'Materials, finishes and tests',
      'Mounts, pads and tags',
      'What remains to be watched, and care',
      'The days',
      'Plates',
      'How to check this copy',
      'Index of parts',
    ];
    for (const chapter of chapters) expect(words.split(chapter).length).toBeGreaterThan(2);
    const index = words.slice(words.lastIndexOf('Index of parts'));
    for (const part of ['Cowl', 'Frame', 'Radiator'])
      expect(index).toMatch(new RegExp(`${part}, \\d+(, \\d+)*`));
    expect(words).toContain('Stripped the cowl to bright steel.');
    expect(words).toContain('The old metal is too thin.');
    expect(pages).toBeGreaterThan(10);
  });

  it('reads its pictures out', () => {
    expect(openedUp(pdf)).toContain('A rusty cowl with lead on its left side.');
  });

  it('carries the sum on its cover, in groups that can be read aloud', () => {
    const grouped = SUM.replace(/.{8}(?=.)/g, '$& ');
    expect(words.split(grouped).length).toBe(3);
  });

  it('holds no word and no amount of a private field, in no octet', () => {
    const file = openedUp(pdf);
    expect(file).not.toContain(PLANTED);
    expect(words).not.toContain(PLANTED);
    for (const amount of AMOUNTS) expect(words).not.toContain(amount);
    expect(words).not.toContain('$');
  });

  it('is the same file when it is printed again', async () => {
    expect((await print(edition)).pdf.equals(pdf)).toBe(true);
  });
});

describe('the book', () => {
  it('says what it came to only when asked', async () => {
    const { words } = await wordsOf((await print('reading', { costs: true })).pdf);
    expect(words).toContain('What it came to');
    expect(words).toContain('by itself, so that no sum of a hand-over stands here');
    expect(words).not.toContain(PLANTED);
  });

  it('prints letters that its type hasn’t as their numbers, and tells of them', async () => {
    const { record: odd } = planted({
      'parts/frame.md': '---\nname: "Frame \u{1f697}\u200d of Łódź, \u65e5 Σ"\ngroup: Chassis\n---\n',
    });
    const { pdf, missing } = await print('archive', {}, odd);
    expect(missing).toEqual(['\u{1f697}', '\u65e5']);
    const { words } = await wordsOf(pdf);
    expect(words).toContain('Frame [U+1F697] of Łódź, [U+65E5] Σ');
  });

  it('is on paper of the record’s country', async () => {
    const data = bookData(record, rollup, photos, { made: '2026-05-29' });
    const { pdf } = await printBook(data, pictures(), { edition: 'archive', units: 'mm' });
    // A4 in points (ISO 216: 210 by 297 mm).
    expect(openedUp(pdf)).toMatch(/\/MediaBox ?\[0 0 595\.27\d* 841\.88\d*\]/);
  });

  it('says where its own sheets are at fault, and prints nothing', async () => {
    const data = bookData(record, rollup, photos, { made: '2026-05-29' });
    const printed = printBook(data, new Map(), { edition: 'archive', units: 'inch' });
    await expect(printed).rejects.toThrow(/^The book wasn’t set: \/book\/back\.typ:\d+ .*one-large\.jpg/);
  });
});
