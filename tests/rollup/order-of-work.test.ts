// What can be done now and what waits: small plans written as a restorer would, with the answer seen by eye.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CarRecord } from '../../src/record/record.ts';
import { orderOfWork, type WaitsFor } from '../../src/rollup/order-of-work.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf } from './records.ts';

const COWL = `---
name: Cowl
group: Body panels
planned:
  - { line: strip, do: Strip it, work: metal, hours: [2, 3, 5] }
  - { line: lead, do: Fill the low spots, work: metal, hours: 6, after: [strip] }
  - { line: plate, do: Have the vent plated, work: assembly, hours: 1, outside: [60, 80, 120], after: [strip] }
  - { line: fit, do: Fit it, work: assembly, hours: [3, 4, 8], after: [lead, frame/level] }
---
`;
const FRAME = `---
name: Frame
group: Chassis
planned:
  - { line: level, do: Level it, work: assembly, hours: [1, 2, 3] }
---
`;
const CHOICE = (more: string) => `---
question: Cellulose, or enamel?
part: frame
asked: 2025-03-10
options:
  - { option: cellulose, way: other, lines: [{ do: Use the gun, work: paint, hours: [3, 4, 6] }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: paint, hours: [5, 7, 9] }] }
${more}---
`;

const orderOf = (record: CarRecord) => orderOfWork(record, rollUp(record));
const written = (texts: Record<string, string> = {}) =>
  orderOf(recordOf({ 'parts/cowl.md': COWL, 'parts/frame.md': FRAME, ...texts }));
const log = (front: string) => `---\n${front}---\n`;

/** `strip, frame?` as a short text: what a line waits for. */
const said = (waits: WaitsFor): string => {
  if (waits.for === 'work') return waits.line;
  if (waits.for === 'word') return `word: ${waits.choice}`;
  return `${waits.for}: ${waits.order.what}`;
};
const states = ({ lines }: ReturnType<typeof orderOf>) =>
  Object.fromEntries(
    lines.map(({ name, state, waits }) => [name, state === 'now' ? 'now' : waits.map(said)]),
  );

describe('the order of work', () => {
  test('what has nothing before it can be done now, the rest waits for its forerunners', () => {
    expect(states(written())).toEqual({
      'cowl/strip': 'now',
      'cowl/lead': ['cowl/strip'],
      'cowl/plate': ['cowl/strip'],
      'cowl/fit': ['cowl/lead', 'frame/level'],
      'frame/level': 'now',
    });
  });

  test('the longest way is counted in likely hours', () => {
    // 3 + 6 + 4 h, by hand.
    expect(written().longest).toEqual({ lines: ['cowl/strip', 'cowl/lead', 'cowl/fit'], minutes: 13 * 60 });
  });

  test('a finished line falls out, and holds nothing up', () => {
    const order = written({
      'log/2025-03-03.md': log(
        'hours:\n  - { part: cowl, line: strip, work: metal, time: 2h }\nfinished: [cowl/strip]\n',
      ),
    });
    expect(states(order)).toMatchObject({ 'cowl/lead': 'now', 'cowl/plate': 'now' });
    expect(states(order)).not.toHaveProperty('cowl/strip');
  });

  test.each([
    ['likely less worked', 'hours:\n  - { part: cowl, line: lead, work: metal, time: 2h }\n', 4 * 60],
    [
      'nothing once more than likely is worked',
      'hours:\n  - { part: cowl, line: lead, work: metal, time: 9h }\n',
      0,
    ],
    [
      'what the writer thinks is left',
      'hours:\n  - { part: cowl, line: lead, work: metal, time: 2h }\nleft:\n  - { line: cowl/lead, hours: [1, 5, 9] }\n',
      5 * 60,
    ],
  ])('the hours left of a line are %s', (_, front, minutes) => {
    const { lines } = written({ 'log/2025-03-03.md': log(front) });
    expect(lines.find(({ name }) => name === 'cowl/lead')).toMatchObject({ minutes, begun: true });
  });
});

describe('an order that has not come', () => {
  const ordered = (line: string, more = '') =>
    written({ 'log/2025-03-03.md': log(`ordered:\n  - { what: Solder, from: keld, ${line} }\n${more}`) });

  test('holds up the line that it names', () => {
    const order = ordered('part: cowl, line: lead');
    expect(states(order)).toMatchObject({
      'cowl/strip': 'now',
      'cowl/lead': ['delivery: Solder', 'cowl/strip'],
    });
    expect(order.otherOrders).toEqual([]);
  });

  test('that names only a part holds up what is not begun of it', () => {
    const begun = 'hours:\n  - { part: cowl, line: strip, work: metal, time: 1h }\n';
    expect(states(ordered('part: cowl', begun))).toEqual({
      'cowl/strip': 'now',
      'cowl/lead': ['delivery: Solder', 'cowl/strip'],
      'cowl/plate': ['outside: Solder', 'cowl/strip'],
      'cowl/fit': ['delivery: Solder', 'cowl/lead', 'frame/level'],
      'frame/level': 'now',
    });
  });

  test('is outside work where the line foresees that and nothing to buy', () => {
    expect(states(ordered('part: cowl, line: plate'))).toMatchObject({
      'cowl/plate': ['outside: Solder', 'cowl/strip'],
    });
  });

  test('is outside work where the option that was taken foresees it', () => {
    const choice = CHOICE(
      'decided: { option: sent, on: 2025-03-12, by: the owner, reason: Better. }\n',
    ).replace(
      '  - { option: cellulose, way: other, lines: [{ do: Use the gun, work: paint, hours: [3, 4, 6] }] }',
      '  - { option: sent, way: other, lines: [{ do: Send it to be painted, outside: 300 }] }',
    );
    const order = written({
      'choices/paint.md': choice,
      'log/2025-03-13.md': log('ordered:\n  - { what: Painting, from: keld, part: frame, choice: paint }\n'),
    });
    expect(states(order)).toMatchObject({ 'frame/level': ['outside: Painting'] });
  });

  test('and that no line waits for is kept apart', () => {
    expect(ordered('price: 4.00').otherOrders.map(({ what }) => what)).toEqual(['Solder']);
  });

  test('holds nothing up once it is received', () => {
    const order = ordered('part: cowl, line: strip', 'received:\n  - { what: Solder, from: keld }\n');
    expect(states(order)).toMatchObject({ 'cowl/strip': 'now' });
  });
});

describe('the owner’s word', () => {
  test.each([
    [
      'the lines that an open choice settles',
      'settles: [frame/level]\n',
      { 'frame/level': ['word: paint'], 'cowl/strip': 'now' },
    ],
    [
      'the lines of its part, where it names none',
      '',
      { 'frame/level': ['word: paint'], 'cowl/strip': 'now' },
    ],
    [
      'nothing once it is decided',
      'decided: { option: enamel, on: 2025-03-12, by: the owner, reason: It is right. }\n',
      { 'frame/level': 'now' },
    ],
    [
      'nothing once it is withdrawn',
      'withdrawn: { on: 2025-03-12, reason: Sound after all. }\n',
      { 'frame/level': 'now' },
    ],
  ])('holds up %s', (_, more, expected) => {
    expect(states(written({ 'choices/paint.md': CHOICE(more) }))).toMatchObject(expected);
  });

  test('a choice that settles one line leaves the others of its part alone', () => {
    const choice = CHOICE('settles: [cowl/plate]\n').replace('part: frame', 'part: cowl');
    expect(states(written({ 'choices/paint.md': choice }))).toMatchObject({
      'cowl/strip': 'now',
      'cowl/lead': ['cowl/strip'],
      'cowl/plate': ['word: paint', 'cowl/strip'],
    });
  });
});

describe('any order of writing', () => {
  const record = recordOf({
    'parts/cowl.md': COWL,
    'parts/frame.md': FRAME,
    'choices/paint.md': CHOICE(''),
    'log/2025-03-03.md': log('ordered:\n  - { what: Solder, from: keld, part: cowl }\n'),
  });

  test('gives the same states, hours and longest way', () => {
    const mixed = fc
      .shuffledSubarray(record.parts, { minLength: record.parts.length })
      .chain((parts) =>
        fc.tuple(
          ...parts.map((part) =>
            fc
              .shuffledSubarray(part.planned ?? [], { minLength: part.planned?.length ?? 0 })
              .map((planned) => ({ ...part, planned })),
          ),
        ),
      );
    const byName = (order: ReturnType<typeof orderOf>) => ({
      ...order,
      lines: order.lines.toSorted((a, b) => (a.name < b.name ? -1 : 1)),
    });
    fc.assert(
      fc.property(mixed, (parts) => {
        expect(byName(orderOf({ ...record, parts }))).toEqual(byName(orderOf(record)));
      }),
    );
  });
});
