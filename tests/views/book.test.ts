import { describe, expect, it } from 'vitest';
import careAdvice from '../../shared/care.json' with { type: 'json' };
import { moistureInAir } from '../../src/measure/air.ts';
import type { BookData } from '../../src/views/book.ts';
import { bookData } from '../../src/views/book.ts';
import { AMOUNTS, PLANTED, planted } from '../handover/planted.ts';

const { record, rollup, photos } = planted();
const book = (asked: { costs?: boolean; sum?: string } = {}): BookData =>
  bookData(record, rollup, photos, { made: '2026-05-29', ...asked });
const data = book();
const rowsOf = (table: { rows: string[][] } | undefined) => table?.rows;

describe('the data of the book', () => {
  it('has no word and no amount of a private field', () => {
    // The record says each of them: else this test could not fail.
    const all = JSON.stringify(record);
    expect(all.split(PLANTED).length).toBeGreaterThan(15);
    const said = JSON.stringify(data);
    expect(said).not.toContain(PLANTED);
    for (const amount of AMOUNTS) expect(said).not.toContain(amount);
    // Figures of rates, pay, handling and materials, and of hours planned and left.
    expect(said).not.toMatch(/71[.,]71|82[.,]82|93[.,]93|17[.,]17|9\.39|\b717\b|\b828\b|\b939\b/);
    expect(said).not.toContain('$');
    expect(Object.keys(data)).not.toContain('costs');
  });

  it('says what the work came to only when it is asked', () => {
    const { costs } = book({ costs: true });
    expect(rowsOf(costs?.parts)?.map(([name]) => name)).toEqual([
      'Cowl',
      'Radiator',
      'The car as a whole',
      'All',
    ]);
    expect(JSON.stringify(book({ costs: true }))).not.toContain(PLANTED);
  });

  it('says what the car is and who worked on it', () => {
    expect(data).toMatchObject({
      title: 'Aldermere Fourteen',
      shop: 'Harrow Bend Coachworks, Harrow Bend',
      period: 'February 3, 2025 to May 29, 2026',
      made: { day: '2026-05-29', text: 'May 29, 2026' },
    });
    expect(data.car.facts).toContainEqual({ name: 'Chassis number', text: '14/1187' });
    expect(data.car.facts).toContainEqual({ name: 'Body number', text: 'No. 218' });
    expect(data.car.people).toEqual([
      { name: 'Tobias Reeve', text: 'T.R.' },
      { name: 'Ines Marlow', text: 'I.M.' },
    ]);
  });

  it('keeps the prose as it was written, with addresses that can be read on paper', () => {
    expect(data.car.story).toEqual([
      {
        kind: 'words',
        spans: [
          { text: 'It stood in a barn, ' },
          { text: 'dry', em: true },
          { text: ', with a wet corner. See ' },
          { text: 'the register' },
          { text: ' (https://example.org/14)' },
          { text: '.' },
        ],
      },
      {
        kind: 'list',
        ordered: false,
        start: 1,
        items: [
          [{ kind: 'words', spans: [{ text: 'two fenders' }] }],
          [{ kind: 'words', spans: [{ text: 'Done: ', em: true }, { text: 'one hood iron' }] }],
        ],
      },
      {
        kind: 'table',
        heads: [[{ text: 'kept' }], [{ text: 'where' }]],
        rows: [[[{ text: 'irons' }], [{ text: 'loft' }]]],
      },
    ]);
  });

  it('says how each part was found, by group', () => {
    expect(data.found.says).toBe('Of 3 parts, 1 was worn and 1 damaged; of 1 nobody wrote how it was found.');
    expect(data.found.groups.map(({ group, table }) => [group, table.rows])).toEqual([
      ['Body panels', [['Cowl', 'Damaged', 'both lower corners gone', 'Original', 'February 10, 2025']]],
      ['Chassis', [['Frame', 'Not said']]],
      // A column in which nothing stands is left out.
      ['Mechanical', [['Radiator', 'Worn', 'Unknown', 'February 11, 2025']]],
    ]);
  });

  it('says what share is original, repaired or new, and how a new piece is known', () => {
    expect(rowsOf(data.fabric.shares)).toEqual([
      ['Original, repaired or with new pieces let in', '1', '33%'],
      ['Not known', '2', '67%'],
    ]);
    expect(rowsOf(data.fabric.changed)).toEqual([
      ['Cowl', 'Original', 'Original, repaired', 'Two corners new, NB 2025'],
      ['Frame', 'Not said', 'Unknown', ''],
      ['Radiator', 'Unknown', 'Unknown', ''],
    ]);
    expect(rowsOf(data.fabric.marks)).toEqual([
      ['Cowl', 'NB 2025, stamped inside', 'New corners, or patches?'],
    ]);
  });

  it('says what was decided, by whom and why, with the options and none of their figures', () => {
    const [corners, paint] = data.choices;
    expect(corners).toMatchObject({
      question: 'New corners, or patches?',
      parts: ['Cowl'],
      reason: 'The old metal is too thin.',
    });
    expect(corners?.facts).toContainEqual({ name: 'Decided', text: 'New corners in steel, March 5, 2025' });
    expect(corners?.facts).toContainEqual({ name: 'By', text: 'the owner, by letter' });
    expect(corners?.options[0]).toEqual({
      name: 'New corners in steel',
      taken: true,
      facts: [
        { name: 'Way', text: 'new made' },
        { name: 'To buy', text: 'Sheet steel, from Millrace Metals' },
        { name: 'Original kept', text: '60%' },
        { name: 'Mark', text: 'NB 2025, stamped inside' },
      ],
      for: ['square edges.'],
      against: ['less old metal.'],
    });
    expect(paint?.facts).toContainEqual({ name: 'State', text: 'open' });
  });

  it('tells the work by part, in order, with who and when', () => {
    const [cowl] = data.work.groups[0]?.parts ?? [];
    expect(cowl?.state).toBe('Found damaged, original; now original: two corners new, NB 2025.');
    expect(rowsOf(cowl?.planned)).toEqual([
      ['Strip it to steel', 'Metal', 'March 3, 2025'],
      ['Paint it in two coats', 'Paint', 'not finished'],
    ]);
    expect(rowsOf(cowl?.done)).toEqual([
      ['March 3, 2025', 'T.R.', 'Metal', 'Paint off the top; lead scraped'],
      ['April 7, 2025', 'I.M.', 'Paint', 'Paint it in two coats'],
    ]);
    expect(rowsOf(data.work.groups[2]?.parts[0]?.done)).toEqual([
      ['March 3, 2025', 'Outside', 'Recore the radiator, by Selwick Radiators'],
    ]);
    expect(rowsOf(data.work.whole)).toEqual([['March 3, 2025', 'I.M.', 'Shop', 'Bench cleared']]);
  });

  it('sets readings as they were found beside the last ones', () => {
    const within = 'should be 0.06 in (1.5 mm), within 0.003 in (0.1 mm)';
    expect(data.measured.map(({ part, table }) => [part, table.rows.map((row) => row.slice(0, 3))])).toEqual([
      [
        'Cowl',
        [
          ['Thickness, lip', 'Before, March 3, 2025', `0.048 in (1.2 mm), 0.047 in (1.2 mm); ${within}`],
          ['', 'After, April 7, 2025', `0.046 in (1.2 mm), 0.048 in (1.2 mm); ${within}`],
        ],
      ],
    ]);
  });

  it('says where lead lies, what was tested, and who supplied what, without a figure', () => {
    expect(rowsOf(data.finishes.lead)).toEqual([
      ['Cowl', 'Lead: body solder 30/70', 'left side, below the waist', 'March 3, 2025'],
    ]);
    expect(rowsOf(data.finishes.tests)).toEqual([
      ['Radiator, 4 psi', 'Radiator', 'March 1, 2025 to March 3, 2025', 'Holds; no bubbles'],
    ]);
    expect(data.finishes.suppliers).toEqual([
      { name: 'Millrace Metals', things: ['Soft iron wire (Cowl)'] },
      { name: 'Selwick Radiators', things: ['Recore the radiator (Radiator)'] },
    ]);
  });

  it('lists pads and tags', () => {
    expect(rowsOf(data.marks.pads)).toEqual([['L1', '1/8 + 1/16 in', '1/8 + 1/16 in', 'March 3, 2025']]);
    expect(rowsOf(data.marks.tags)).toEqual([
      ['Cowl', 'CW 1', 'Bolts (4)', 'Lower flange', 'Refit', 'Bag 12'],
    ]);
  });

  it('puts the pictures of a pair side by side, each with its words', () => {
    expect(data.plates.map(({ file, caption, alt, part }) => [file, caption, alt, part])).toEqual([
      [
        'pictures/one-large.webp',
        'Before. The cowl as it came.',
        'A rusty cowl with lead on its left side.',
        'Cowl',
      ],
      ['pictures/two-large.webp', 'After. The same side in green.', 'A smooth green cowl.', 'Cowl'],
    ]);
  });

  it('names what remains to be watched, and what can hurt there', () => {
    expect(data.watch.lists.map(({ title, items }) => [title, items.length])).toEqual([
      ['Work that was planned and isn’t finished', 1],
      ['Questions that are still open', 1],
      ['Readings that were not as they should be when last taken', 1],
      ['Parts looked for and not found', 1],
    ]);
    expect(data.watch.lists[0]?.items).toEqual(['Cowl: Paint it in two coats.']);
    expect(data.watch.lists[3]?.items).toEqual(['Second hood iron: not found, March 3, 2025.']);
    expect(data.watch.cautions.map(({ hazard, parts }) => [hazard, parts])).toEqual([
      ['lead', 'Cowl'],
      ['spray', 'Cowl'],
    ]);
    expect(data.watch.closing).toContain('does not say that work is safe');
  });

  it('says how the car is kept, by what was done on it, and sends to those who are qualified', () => {
    const given = (record: typeof data.watch.care) => record.map(({ title }) => title);
    expect(given(data.watch.care)).toContain('Lead under the paint');
    expect(given(data.watch.care)).not.toContain('Top and trim');
    expect(given(data.watch.care).at(-1)).toBe('This record');
    for (const { title, source } of data.watch.care) expect(source, title).not.toBe('');
    expect(data.watch.careClosing).toMatch(/looked over by somebody qualified, as the law of the place asks/);
  });

  it('asks for air in which timber is as moist as it says', () => {
    // Simpson 1998, FPL-RN-0268: 40% to 55% at 70 °F (21.1 °C), in tenths of the dry weight.
    const [dry, damp] = [moistureInAir(21.1, 0.4), moistureInAir(21.1, 0.55)];
    expect([dry, damp].map((each) => each.ok && Math.round(each.value * 100))).toEqual([8, 10]);
    const air = careAdvice.care.find(({ id }) => id === 'air');
    expect(air?.text).toMatch(/40% to 55% .* 8% to 10% moisture/);
  });

  it('has the days in their words', () => {
    expect(data.days.map(({ month, days }) => [month, days.map(({ day, who }) => `${day}: ${who}`)])).toEqual(
      [
        ['March 2025', ['Monday, March 3: Tobias Reeve,Ines Marlow']],
        ['April 2025', ['Monday, April 7: Ines Marlow']],
      ],
    );
  });

  it('is short, and whole, for a record that has only begun', () => {
    const bare = planted({
      'parts/cowl.md': '---\nname: Cowl\ngroup: Body panels\n---\n',
      'parts/radiator.md': '---\nname: Radiator\ngroup: Mechanical\n---\n',
      'log/2025-03-03.md': '---\n---\n',
      'log/2025-04-07.md': '---\n---\n',
    });
    const said = bookData({ ...bare.record, choices: [] }, bare.rollup, new Map(), { made: '2026-05-29' });
    expect(said.found.says).toBe('Of 3 nobody wrote how it was found.');
    expect([said.days, said.plates, said.measured, said.marks.tags, said.watch.lists]).toEqual([
      [],
      [],
      [],
      undefined,
      [],
    ]);
  });
});
