import { createCanvas } from '@napi-rs/canvas';
import { beforeAll, describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { printChoice, setChoice } from '../../src/handover/print-choice.ts';
import { forAudience } from '../../src/record/audience.ts';
import type { CarRecord } from '../../src/record/record.ts';
import type { Rollup } from '../../src/rollup/cost-lines.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { optionRows } from '../../src/views/choice.ts';
import { type ChoicePaper, choicePaper } from '../../src/views/choice-paper.ts';
import { choiceSheet } from '../../src/views/choice-sheet.ts';
import { isOpen } from '../../src/views/choice-words.ts';
import { plain } from '../../src/views/live/said.ts';
import type { Photos } from '../../src/views/photos.ts';
import { aboutOf, openedUp, wordsOf } from './pdf.ts';

const PRESS = { edition: 'archive', units: 'inch', made: '2026-05-29' } as const;

let record: CarRecord;
let rollup: Rollup;
let photos: Photos;

beforeAll(async () => {
  const { record: whole } = await openFolder('content');
  if (!whole) throw new Error('The demo can’t be opened.');
  record = forAudience(whole, 'owner');
  rollup = rollUp(record);
  const small = { file: 'pictures/small.webp', width: 480, height: 320 };
  photos = new Map(
    record.photos.map((file, i) => [file, { file: `pictures/${i}.webp`, width: 1600, height: 1067, small }]),
  );
});

const paperOf = (id: string) => {
  const choice = record.choices.find((one) => one.id === id);
  if (!choice) throw new Error(`The demo has no choice ${id}.`);
  return choicePaper(choice, record, rollup, photos);
};

/** A gray picture for each that the paper asks for. */
const picturesOf = ({ shots }: ChoicePaper) =>
  new Map(shots.map(({ file }) => [file, createCanvas(60, 40).toBuffer('image/jpeg')]));

const set = (paper: ChoicePaper, press: Partial<Parameters<typeof setChoice>[2]> = {}) =>
  setChoice(paper, picturesOf(paper), { ...PRESS, ...press });

/** In one line, as a reader of the PDF gives it: a break after a dash or a slash is no space of the text. */
const bare = (text: string) => text.replace(/\s+/g, '');

describe('an open choice in print', () => {
  const signed = ['Asked of the owner.', 'A trial first, then ask again', 'Signed, for the owner', 'Date'];

  it('is one sheet of Letter or of A4, with room to sign', async () => {
    const open = record.choices.filter(isOpen);
    expect(open.length).toBeGreaterThan(1);
    for (const { id } of open) {
      const paper = paperOf(id);
      // In points: US Letter 8.5 by 11 in; A4 210 by 297 mm (ISO 216).
      for (const [units, box] of [
        ['inch', /\/MediaBox ?\[0 0 612 792\]/] as const,
        ['mm', /595\.27\d* 841\.88/] as const,
      ]) {
        const { pdf, missing } = await set(paper, { units });
        const { pages, words } = await wordsOf(pdf);
        expect([id, units, pages, missing]).toEqual([id, units, 1, []]);
        expect(openedUp(pdf)).toMatch(box);
        for (const each of [...signed, 'Signed, for Harrow Bend Coachworks']) expect(words).toContain(each);
      }
    }
  });

  it('says of every option, of every sentence and of every caution what its page says', async () => {
    for (const choice of record.choices.filter(isOpen)) {
      const shown = choiceSheet(choice, record, rollup);
      const { words } = await wordsOf((await set(paperOf(choice.id))).pdf);
      const figures = shown?.said.options.flatMap(({ cost, span, hours, cheapest }) => [
        cost,
        span,
        hours,
        cheapest,
      ]);
      const written = optionRows(choice, record)
        .filter(({ head }) => head !== 'Work' && head !== 'Way')
        .flatMap(({ head, cells }) => [
          head,
          ...cells.flat().flatMap(({ text, figures: own }) => [text, ...own.map((each) => each.text)]),
        ]);
      const bars = shown?.ranges.flatMap(({ name, lowText, middleText, highText }) => [
        name,
        lowText,
        middleText,
        highText,
      ]);
      const said = shown?.said.sentences.flatMap(({ head, text }) => [head, plain(text)]);
      const all = [choice.question, ...(figures ?? []), ...written, ...(bars ?? []), ...(said ?? [])];
      expect(all.length).toBeGreaterThan(30);
      expect(all.filter((text) => !bare(words).includes(bare(text)))).toEqual([]);
      // The page leaves planned work out of the sheet, and so does print.
      expect(words).not.toContain('(metal)');
    }
  });

  it('goes on to another sheet where its options are too many for one', async () => {
    const paper = paperOf('rear-fender-right');
    const reasons = paper.rows.find(({ head }) => head === 'Against');
    const rows = [...paper.rows, ...Array.from({ length: 6 }, () => reasons ?? paper.rows[0])].flatMap(
      (row) => row ?? [],
    );
    const { pages, words } = await wordsOf((await set({ ...paper, rows })).pdf);
    expect(pages).toBe(2);
    expect(words).toContain('2 of 2');
    expect(words.match(/Brass has run into the steel/g)).toHaveLength(7);
    expect(words.match(/Signed, for the owner/g)).toHaveLength(1);
  });
});

describe('a choice that has ended', () => {
  it('says who decided and why, what it took against what was foreseen, and what is logged', async () => {
    const { words } = await wordsOf((await set(paperOf('rear-fender-left'))).pdf);
    for (const each of [
      'Repair the original. By Miriam Castell, who came and looked along both.',
      'The crown of the original is the line of the car.',
      'What it took against what was foreseen',
      'decided on',
      'Cut out the lower edge, weld in new, wire it (metal): 9 – 22 h, most likely 13',
      'care: hot work',
      'As it stood when it was decided.',
      'Orrin lent a reproduction for two weeks against a deposit.',
      'Logged to it so far',
    ])
      expect(words).toContain(each);
    expect(words).not.toContain('Signed, for the owner');
  });

  it('or was withdrawn, and why', async () => {
    const { withdrawn } = record.choices.find(({ id }) => id === 'door-hinges') ?? {};
    const { words } = await wordsOf((await set(paperOf('door-hinges'))).pdf);
    expect(words).toContain('Withdrawn');
    expect(bare(words)).toContain(bare(withdrawn?.reason ?? 'no reason'));
  });
});

describe('every choice in print', () => {
  it.each([
    // ISO 19005-2, 6.6.4; ISO 14289-1, 5. The printer throws at the first thing that the standard doesn’t allow.
    ['archive', ['<pdfaid:part>2</pdfaid:part>', '<pdfaid:conformance>A<', '/StructTreeRoot']],
    ['reading', ['<pdfuaid:part>1<', '/DisplayDocTitle true', '/StructTreeRoot']],
  ] as const)('follows its standard in the %s edition', async (edition, claims) => {
    for (const { id } of record.choices) {
      const paper = paperOf(id);
      const { pdf } = await set(paper, { edition });
      const file = openedUp(pdf);
      for (const claim of claims) expect(file).toContain(claim);
      expect(await aboutOf(pdf)).toMatchObject({
        Title: `${paper.title}: Aldermere Fourteen`,
        CreationDate: expect.stringContaining('20260529'),
      });
    }
  });

  it('reads its pictures and its bars out', async () => {
    const paper = paperOf('rear-fender-right');
    const file = openedUp((await set(paper, { edition: 'reading' })).pdf);
    expect(paper.shots).toHaveLength(3);
    for (const { alt } of paper.shots) expect(bare(file)).toContain(bare(alt));
    // A text with a letter beyond PDFDocEncoding is written in UTF-16 (ISO 32000-1, 7.9.2.2), here as hexadecimal.
    const bars = 'What each may come to. Repair the original: $2,400 to $5,100, middle $3,000.';
    expect(file).toContain(Buffer.from(bars, 'utf16le').swap16().toString('hex').toUpperCase());
  });

  it('is the same file when it is printed again', async () => {
    const paper = paperOf('top-cloth');
    expect((await set(paper)).pdf.equals((await set(paper)).pdf)).toBe(true);
  });
});

describe('a choice that there isn’t', () => {
  const none = (id: string, whole = record) => printChoice({ whole, folder: 'content' }, id, PRESS);

  it('is answered with the nearest one, or with all', async () => {
    expect(await none('top-clot')).toEqual({
      refused: 'There is no choice `top-clot`. Did you mean `top-cloth`?',
    });
    expect((await none('steering')).refused).toMatch(
      /^There is no choice `steering`\. There are `door-hinges`, .*`wheels`\.$/,
    );
    expect((await none('steering', { ...record, choices: [] })).refused).toBe(
      'There is no choice `steering`. The record has none yet.',
    );
  });
});
