// The page of measurements and those of parts, in words.
import { describe, expect, test } from 'vitest';
import { page } from '../../src/views/links.ts';
import { drawnParts, measuredPart, measurementsPage } from '../../src/views/measured.ts';
import { recordOf } from '../rollup/records.ts';

const log = (...lines: string[]) =>
  `---\nmeasured:\n${lines.map((line) => `  - { ${line} }\n`).join('')}---\n`;
const level = (at: string, state: string, reading: string) =>
  `kind: level, part: frame, state: ${state}, at: ${at}, reading: ${reading}, within: 0.5°, over: 3 1/2 in`;
const BAY =
  'kind: diagonals, part: frame, of: main bay, a: 88 in, b: 41 in, a2: 88 in, b2: 41 in, within: 1/8 in, plus-minus: 1/32 in';
const DOORS = Object.fromEntries(
  ['left', 'right'].map((side) => [`parts/door-${side}.md`, `---\nname: ${side} door\ngroup: Doors\n---\n`]),
);
const gap = (side: string, readings: string) =>
  `kind: gaps, part: door-${side}, state: after, where: rear edge, readings: [${readings}], length: 24 in`;

const record = recordOf({
  ...DOORS,
  'log/2025-03-03.md': log(
    `${BAY}, state: before, d1: 97 1/4 in, d2: 96 15/16 in`,
    level('L3', 'before', '1.4°'),
    level('L4', 'before', '0.8°'),
    'kind: thickness, part: cowl, state: before, readings: [0.041 in], target: 18 ga steel, within: 0.003 in',
  ),
  'log/2025-03-10.md': log(
    `${BAY}, state: after, d1: 97 1/8 in, d2: 97 1/16 in`,
    level('L3', 'after', '0.2°'),
    gap('left', '5/32 in, 5/32 in'),
    gap('right', '3/16 in, 5/32 in'),
  ),
});
const told = measurementsPage(record);

describe('the page of measurements', () => {
  test('opens with how many things passed as last read', () => {
    expect(told.opening).toBe(
      '8 readings of 6 things. As last read, 2 passed, 2 did not pass, 2 have no tolerance.',
    );
    expect(measurementsPage(recordOf({})).opening).toBe('Nothing has been measured yet.');
  });

  test('puts before and after side by side, in both units, with the tolerance in words', () => {
    const frame = told.parts.find(({ part }) => part === 'Frame');
    expect(frame?.rows[0]).toEqual({
      what: 'main bay',
      figure: 'diagonals differ by',
      before: { text: '5/16 ± 0.051 in (7.9 ± 1.3 mm)', day: 'March 3, 2025', to: 'day/2025-03-03.html' },
      since: {
        text: '1/16 ± 0.051 in (1.6 ± 1.3 mm)',
        day: 'March 10, 2025',
        to: 'day/2025-03-10.html',
        state: 'after',
      },
      state: 'passed: within 1/8 in (3.2 mm)',
      amiss: false,
    });
    expect(frame?.rows[2]).toMatchObject({ what: 'L4', since: undefined, state: 'not passed: beyond 0.5°' });
  });

  test('lists first what did not pass', () => {
    expect(told.amiss.map(({ part, rows }) => [part, rows.map(({ what }) => what)])).toEqual([
      ['Cowl', ['thickness']],
      ['Frame', ['L4']],
    ]);
    expect(told.amiss[0]?.rows[0]).toMatchObject({
      figure: 'thickness, furthest off',
      before: { text: '0.0068 in (0.17 mm)' },
    });
  });

  test('leads to the drawings of a part that has any, and to no others', () => {
    expect(drawnParts(record)).toEqual(['door-left', 'door-right', 'frame']);
    expect(told.parts.map(({ drawings }) => drawings)).toEqual([
      undefined,
      'measured/door-left.html',
      'measured/door-right.html',
      'measured/frame.html',
    ]);
    expect(page.measured('pads')).not.toBe(page.pads);
  });
});

describe('a part’s page of measurements', () => {
  const frame = measuredPart('frame', record);

  test('has the answer as its heading', () => {
    expect(frame.heading).toBe('Frame: 1 of 3 not as it should be');
    expect(measuredPart('door-left', record).heading).toBe('left door: measured');
  });

  test('has each thing with its drawing, and its readings in a table behind it', () => {
    expect(
      frame.sections.map(({ title, picture, compares, plains }) => [
        title,
        picture !== undefined,
        compares.length + plains.length,
      ]),
    ).toEqual([
      ['Square: main bay', true, 1],
      ['Level: the brackets of the mounts', true, 1],
    ]);
    const [square] = frame.sections;
    const [table] = square?.compares ?? [];
    const row = (name: string) => table?.rows.find((each) => each.name === name)?.cells;
    expect(table?.heads.map(({ text, state }) => `${text}, ${state}`)).toEqual([
      'March 3, 2025, before',
      'March 10, 2025, after',
    ]);
    expect(row('Diagonal 1 to 3')).toEqual(['97 1/4 in (2470.2 mm)', '97 1/8 in (2467.0 mm)']);
    // (97 1/4^2 - 96 15/16^2) / (4 x 88) = 0.1724 in, near 11/64; over 88 in instead 0.37, near 3/8
    expect(row('Rack over 2 to 3')?.[0]).toMatch(/^about 11\/64 ± /);
    expect(row('Rack over 1 to 2')?.[0]).toMatch(/^about 3\/8 ± /);
    expect(table?.rows.at(-1)).toEqual({
      name: 'State',
      cells: ['not passed: beyond 1/8 in (3.2 mm)', 'passed: within 1/8 in (3.2 mm)'],
      last: true,
    });
  });

  test('says the length once that all levels were read over', () => {
    expect(frame.sections[1]?.plains[0]).toEqual({
      caption: 'Before and after, read over 3 1/2 in (88.9 mm)',
      heads: ['Place', 'Before', 'After', 'Rise now', 'State'],
      rows: [
        ['L3', '+1.4°', '+0.2°', '0.012 in (0.3 mm)', 'passed: within 0.5°'],
        ['L4', '+0.8°', 'not read again', '0.049 in (1.2 mm)', 'not passed: beyond 0.5°'],
      ],
    });
  });

  test('shows a gap with the same one of the other side', () => {
    const [left] = measuredPart('door-left', record).sections;
    const [right] = measuredPart('door-right', record).sections;
    expect(left?.title).toBe('Gap, left and right: rear edge');
    expect(left?.says).toEqual([
      'Left against right, as last read: the left is narrower by 1/64 in (0.4 mm) in the mean, they differ by 1/32 in (0.8 mm) at most in one place, and by 1/32 in (0.8 mm) in taper.',
    ]);
    expect(right?.picture).toEqual(left?.picture);
  });

  test('states the exaggeration of every drawing, and tells it in words', () => {
    const pictures = ['frame', 'door-left'].flatMap((part) =>
      measuredPart(part, record).sections.flatMap(({ picture }) => picture ?? []),
    );
    expect(pictures).toHaveLength(3);
    for (const { desk, phone, larger, title, description } of pictures) {
      expect(larger).toContain(String(desk.factor));
      expect(phone.factor).toBe(desk.factor);
      expect(title).not.toBe('');
      expect(description).toMatch(/\.$/);
    }
  });
});
