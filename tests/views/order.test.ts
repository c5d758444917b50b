// The page of the order of work, word for word, and the geometry of its drawing.
import { describe, expect, test } from 'vitest';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { BAR, chainOf } from '../../src/views/chain.ts';
import { orderOfWork, orderPage } from '../../src/views/order.ts';
import { recordOf } from '../rollup/records.ts';
import { viewed } from './records.ts';

const TEXTS = {
  'parts/cowl.md': `---
name: Cowl
group: Body panels
planned:
  - { line: strip, do: Strip it, work: metal, hours: [2, 3, 5], hazards: [lead] }
  - { line: fill, do: Fill the low spots, work: metal, hours: 6, after: [strip] }
  - { line: vent, do: Have the vent plated, work: assembly, outside: [60, 80, 120] }
  - { line: fit, do: Fit it, work: assembly, hours: [3, 4, 8], after: [fill, frame/level] }
---
`,
  'parts/frame.md': `---
name: Frame
group: Chassis
planned:
  - { line: level, do: Level it, work: assembly, hours: [1, 2, 3] }
  - { line: paint, do: Paint it, work: paint, hours: 5 }
---
`,
  'choices/paint.md': `---
question: Cellulose, or enamel?
part: frame
settles: [frame/paint]
asked: 2025-03-10
needed-by: 2025-05-01
options:
  - { option: cellulose, way: other, lines: [{ do: Use the gun, work: paint, hours: [3, 4, 6] }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: paint, hours: [5, 7, 9] }] }
---
`,
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, line: strip, work: metal, time: 1h }
ordered:
  - { what: Solder, from: keld, part: cowl, line: fill, expected: 2025-04-10 }
  - { what: Plating of the vent, from: millrace, part: cowl, line: vent }
  - { what: Rags, from: keld, expected: 2025-05-02 }
---
`,
};
const record = recordOf(TEXTS);
const order = orderOfWork(record, rollUp(record));
const told = orderPage(order, record, '2025-05-02');
const group = (key: string) => told.groups.find((each) => each.key === key);

describe('the page of the order of work', () => {
  test('opens with how many lines can be done and how many wait', () => {
    expect(told.opening).toBe('2 lines can be done now, and 4 wait.');
  });

  test('lists what can be done now, with the hours left', () => {
    expect(group('now')?.rows.map(({ part, text, left, also }) => [part.text, text, left, also])).toEqual([
      ['Cowl', 'Strip it', '2 h', 'in hand'],
      ['Frame', 'Level it', '2 h', ''],
    ]);
  });

  test('says what an order is, and by how many days it is overdue on that day', () => {
    // From April 10 to May 2: 20 + 2 days.
    expect(group('delivery')?.rows.map(({ waits, also }) => [waits, also])).toEqual([
      [
        [
          {
            text: 'Solder, from Keld Fasteners',
            note: 'ordered March 3, 2025; expected April 10, 2025, 22 days overdue',
          },
        ],
        'waits for other work too',
      ],
    ]);
    expect(group('outside')?.rows[0]).toMatchObject({
      left: '',
      waits: [
        { text: 'Plating of the vent, from Millrace Metals', note: 'ordered March 3, 2025; no day named' },
      ],
    });
  });

  test('on the day itself an order is not overdue, nor before', () => {
    for (const day of ['2025-04-10', '2025-04-01']) {
      const on = orderPage(order, record, day).groups.find(({ key }) => key === 'delivery');
      expect(on?.rows[0]?.waits[0]?.note).toBe('ordered March 3, 2025; expected April 10, 2025');
    }
  });

  test('names the question that the owner has to answer, and leads to it', () => {
    expect(group('word')?.rows[0]?.waits).toEqual([
      {
        text: 'Cellulose, or enamel?',
        to: 'choice/paint.html',
        note: 'asked March 10, 2025; needed by May 1, 2025, 1 day ago',
      },
    ]);
  });

  test('names the lines that come first, of other parts too', () => {
    expect(group('work')?.rows.map(({ text, waits }) => [text, waits.map((each) => each.text)])).toEqual([
      ['Fill the low spots', ['Cowl: Strip it']],
      ['Fit it', ['Cowl: Fill the low spots', 'Frame: Level it']],
    ]);
  });

  test('keeps apart what is on order and holds up no line', () => {
    expect(told.otherOrders).toEqual([
      {
        text: 'The car as a whole: Rags, from Keld Fasteners',
        note: 'ordered March 3, 2025; expected May 2, 2025',
      },
    ]);
  });

  test('tells the longest way, with its hours', () => {
    // 3 − 1 worked, 6, 4.
    expect(told.longest).toEqual({
      hours: 'The longest way through is 12 h.',
      steps: 'Cowl: Strip it (2 h), then Cowl: Fill the low spots (6 h), then Cowl: Fit it (4 h).',
    });
  });

  test('carries the hazards of what is still to do', () => {
    expect(new Set(told.hazards)).toEqual(new Set(['lead', 'spray']));
  });

  test('says so when nothing is left, and when nothing can be done', () => {
    const done = viewed({
      'log/2025-05-03.md': '---\nby: tobias\nfinished: [cowl/lead, cowl/paint, frame/level]\n---\n',
    });
    const none = orderPage(orderOfWork(done.record, done.rollup), done.record, '2025-06-01');
    expect(none.opening).toBe('Every planned line is finished.');
    expect(none.longest).toEqual({ hours: '', steps: '' });
  });
});

describe('the drawing of the chain', () => {
  const rowsOf = (width: number) => chainOf(order, record, width)?.bands.flatMap(({ rows }) => rows) ?? [];

  test('shows the lines that wait or are waited for, each below those, the longest way together', () => {
    expect(rowsOf(760).map(({ name, longest }) => [name, longest])).toEqual([
      ['frame/level', false],
      ['cowl/strip', true],
      ['cowl/fill', true],
      ['cowl/fit', true],
    ]);
  });

  test('draws bars to scale: each begins where the last that it waits for ends', () => {
    const bar = (name: string) => rowsOf(760).find((row) => row.name === name) ?? { x: 0, width: 0 };
    const end = (name: string) => bar(name).x + bar(name).width;
    expect(bar('cowl/fill').x).toBeCloseTo(end('cowl/strip'), 1);
    expect(bar('cowl/fit').x).toBeCloseTo(end('cowl/fill'), 1);
    // 6 h are three times 2 h.
    expect(bar('cowl/fill').width / bar('cowl/strip').width).toBeCloseTo(3, 1);
    expect(bar('frame/level').width).toBe(bar('cowl/strip').width);
  });

  test('keeps within its frame, in both sizes, with a tick for the last hour', () => {
    for (const width of [760, 340]) {
      const chain = chainOf(order, record, width);
      const last = chain?.bands.at(-1);
      for (const { x, width: long, y, label, hours } of rowsOf(width)) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x + long).toBeLessThan(width);
        expect(hours.x).toBeLessThan(width - 40);
        expect(y + BAR).toBeLessThan((last?.top ?? 0) + (last?.height ?? 0));
        expect(label.x).toBeGreaterThanOrEqual(0);
      }
      expect(Number(chain?.ticks.at(-1)?.text)).toBeGreaterThanOrEqual(12);
    }
  });

  test('is cut into bands without a gap, each with its own rows and every link that crosses it', () => {
    const planned = Array.from(
      { length: 25 },
      (_, i) => `  - { line: l${i}, do: Do it, work: metal, hours: 1${i === 0 ? '' : ', after: [l0]'} }\n`,
    );
    const long = recordOf({
      'parts/cowl.md': `---\nname: Cowl\ngroup: Body panels\nplanned:\n${planned.join('')}---\n`,
    });
    const bands = chainOf(orderOfWork(long, rollUp(long)), long, 760)?.bands ?? [];
    expect(bands.map(({ rows }) => rows.length)).toEqual([10, 10, 5]);
    bands.slice(1).forEach(({ top }, i) => {
      expect(top).toBe((bands[i]?.top ?? 0) + (bands[i]?.height ?? 0));
    });
    for (const { rows, top, height } of bands) {
      for (const { y } of rows) expect(y > top && y + BAR < top + height).toBe(true);
    }
    // From the first line to 24 others: those to the last five rows cross all three bands.
    expect(bands.map(({ links }) => links.length)).toEqual([24, 15, 5]);
  });

  test('links every line to what it waits for, the longest way marked', () => {
    const links = chainOf(order, record, 760)?.bands.flatMap((band) => band.links) ?? [];
    expect(links).toHaveLength(3);
    expect(links.filter(({ longest }) => longest)).toHaveLength(2);
  });

  test('is left out when no line waits for another', () => {
    const { record: plain } = viewed();
    const alone = { ...plain, parts: plain.parts.filter(({ id }) => id === 'frame') };
    expect(chainOf(orderOfWork(alone, rollUp(alone)), alone, 760)).toBeUndefined();
  });
});
