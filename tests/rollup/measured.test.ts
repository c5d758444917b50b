// The geometry applied to readings as written. Expected figures: rows D5, D9 and D11 of published and worked-out
// checks of shape, and by hand where said. An inch is 25.4 mm (NIST SP 811, app. B).
import { describe, expect, test } from 'vitest';
import { mountsOf } from '../../src/rollup/measured/mounts.ts';
import { gapPairs } from '../../src/rollup/measured/sides.ts';
import { type Kind, type MeasuredOf, measuredBy, measurementsOf } from '../../src/rollup/measured.ts';
import { recordOf } from './records.ts';

const day = (...lines: string[]) =>
  `---\nmeasured:\n${lines.map((line) => `  - { ${line} }\n`).join('')}---\n`;
const metric = (...lines: string[]) => recordOf({ 'log/2025-03-03.md': day(...lines) });

/** The answer to the only reading of a record. */
function answerOf<K extends Kind>(kind: K, line: string) {
  const [only] = measurementsOf(metric(`kind: ${kind}, part: frame, state: before, ${line}`)).readings;
  const { answer } = only as MeasuredOf<K>;
  if (!answer.ok) throw new Error(answer.why);
  return answer.value as Extract<MeasuredOf<K>['answer'], { ok: true }>['value'];
}

describe('a reading as written', () => {
  test('of a level: 1.5° over 300 mm is 7.856 mm', () => {
    // tan 1.5° = 0.026185921 (bc -l)
    const level = answerOf('level', 'reading: 1.5°, over: 300 mm, within: 0.5°, plus-minus: 0.1°');
    expect(level.riseOff?.value).toBeCloseTo(7.855776, 5);
    expect(level.off).toEqual({ value: 1.5, plusMinus: 0.1 });
    expect(level.riseOff?.plusMinus).toBeCloseTo(0.523959, 5);
    expect(level.verdict).toBe('not within');
  });

  test('of diagonals: 1200 × 900 with 1502 and 1498 is 0.159155° out and 2.5 mm racked over the 900 side', () => {
    const sides = 'a: 1200 mm, b: 900 mm, a2: 1200 mm, b2: 900 mm';
    const square = answerOf('diagonals', `${sides}, d1: 1502 mm, d2: 1498 mm, within: 3 mm`);
    expect(square.outOfSquare.value).toBeCloseTo(0.159155, 6);
    expect(square.rack.overB.value).toBeCloseTo(2.5, 6);
    expect(square.square).toBe('not square');
    expect(answerOf('diagonals', 'a: 1200 mm, b: 900 mm, d1: 1500 mm, d2: 1500 mm').square).toBe('not known');
  });

  test('of four corners 0, 0, 0, 8: twist −8, zone 4', () => {
    const flat = answerOf('heights', 'corners: [0 mm, 0 mm, 0 mm, 8 mm], within: 3 mm, plus-minus: 0.1 mm');
    expect(flat.twist?.value).toBeCloseTo(-8, 9);
    expect(flat.zone.width.value).toBeCloseTo(4, 9);
    expect(flat.zone.width.plusMinus).toBeCloseTo(0.2, 12);
    expect(flat.verdict).toBe('within');
  });

  test('of offsets 0, 3, 0, 0, 0 along 400: zone 3.0, least squares 3.3', () => {
    const straight = answerOf('straight', 'length: 400 mm, offsets: [0 mm, 3 mm, 0 mm, 0 mm, 0 mm]');
    expect(straight.zone.width.value).toBeCloseTo(3, 9);
    expect(straight.leastSquares.range.value).toBeCloseTo(3.3, 9);
    expect(straight.high).toEqual([{ along: 100, off: expect.closeTo(1.5, 9) }]);
  });

  test('of gaps and lengths: mean, spread, and what is furthest from the target', () => {
    const gap = answerOf(
      'gaps',
      'where: rear edge, readings: [4 mm, 5 mm, 6 mm], target: 4 mm, within: 1 mm',
    );
    expect([gap.mean.value, gap.spread.value, gap.taper?.value, gap.off?.value]).toEqual([5, 2, 2, 2]);
    expect(gap.verdict).toBe('not within');
    const length = answerOf(
      'length',
      'readings: [112 in], target: 2845 mm, within: 1 mm, plus-minus: 1/64 in',
    );
    expect(length.off?.value).toBeCloseTo(-0.2, 9);
    expect(length.mean.plusMinus).toBe(0.396875);
  });

  test('of a thickness against a gauge: 18 ga steel is 0.0478 in', () => {
    const sheet = answerOf('thickness', 'readings: [0.044 in], target: 18 ga steel, within: 0.003 in');
    expect(sheet.off?.value).toBeCloseTo(-0.0038 * 25.4, 9);
    expect(sheet.verdict).toBe('not within');
  });

  test('of timber: the meter’s ± goes into the movement, the width counts as said', () => {
    const line = 'species: white ash, width: 100 mm, grain: tangential, moisture-from: 12%, moisture-to: 8%';
    const plain = answerOf('timber', line);
    expect(plain.change.plusMinus).toBeUndefined();
    const { change } = answerOf('timber', `${line}, plus-minus: 1%`);
    expect(change.value).toBe(plain.change.value);
    // Two moistures, each ± 1%: twice the root of two thirds of a quarter of the change over four points.
    expect(change.plusMinus).toBeCloseTo((2 * Math.sqrt(2 / 3) * Math.abs(change.value)) / 4, 6);
  });

  test('that has no answer keeps the sentence that says why', () => {
    const record = metric(
      'kind: timber, part: frame, state: before, species: lignum, width: 5 in, grain: radial, moisture-from: 12%, moisture-to: 8%',
    );
    expect(measurementsOf(record).readings[0]?.answer).toEqual({
      ok: false,
      why: 'There are no movement figures for “lignum” here.',
    });
  });

  test('of heights at mounts takes their places from another reading, or says that nothing tells them', () => {
    const placed =
      'kind: heights, part: frame, state: before, points: [{ mount: L1, x: 0 in, y: 0 in, z: 0 in }, { mount: L10, x: 88 in, y: 0 in, z: 0 in }, { mount: R1, x: 0 in, y: 41 in, z: 0 in }, { mount: L2, x: 88 in, y: 41 in, z: 8 mm }]';
    const bare =
      'kind: heights, part: frame, state: after, points: [{ mount: L1, z: 0 in }, { mount: L10, z: 0 in }, { mount: R1, z: 0 in }, { mount: L2, z: 8 mm }]';
    const both = metric(placed, bare);
    const [one, other] = measurementsOf(both).readings;
    expect(other?.answer).toEqual(one?.answer);
    expect([...mountsOf(both).keys()]).toEqual(['L1', 'L2', 'L10', 'R1']);
    expect(measurementsOf(metric(bare)).readings[0]?.answer).toMatchObject({
      ok: false,
      why: expect.stringContaining('don’t say where'),
    });
  });
});

describe('one thing through the record', () => {
  const level = (at: string, state: string, reading: string) =>
    `kind: level, part: frame, state: ${state}, at: ${at}, reading: ${reading}`;
  const record = recordOf({
    'log/2025-03-03.md': day(level('L3', 'before', '1.4°'), level('L4', 'before', '0.1°')),
    'log/2025-03-04.md': day(level('l3', 'before', '1.3°'), level('L3', 'trial', '0.6°')),
    'log/2025-03-05.md': day(level('L3', 'after', '0.3°')),
    'log/2025-03-06.md': day(level('L3', 'after', '0.2°')),
  });
  const { readings, things } = measurementsOf(record);

  test('is as found, as tried and as left', () => {
    const [thing] = things;
    expect(things.map(({ name }) => name)).toEqual(['L3', 'L4']);
    expect(thing?.readings.map(({ day: on }) => on)).toEqual([
      '2025-03-03',
      '2025-03-04',
      '2025-03-04',
      '2025-03-05',
      '2025-03-06',
    ]);
    expect([thing?.before?.day, thing?.after?.day, thing?.last.day]).toEqual([
      '2025-03-03',
      '2025-03-06',
      '2025-03-06',
    ]);
    expect(things[1]?.after).toBeUndefined();
  });

  test('keeps the place in the files of each reading', () => {
    expect(readings[0]).toMatchObject({
      entry: '2025-03-03',
      place: { file: 'log/2025-03-03.md', line: 3 },
    });
    const [reading] = record.entries[0]?.measured ?? [];
    if (!reading) throw new Error('the first day has a reading');
    expect(measuredBy(record, reading)).toBe(readings[0]);
  });

  test('is another thing at another size, named or not', () => {
    const bay = (a: string, d1: string) =>
      `kind: diagonals, part: frame, state: before, a: ${a}, b: 30 in, d1: ${d1}, d2: ${d1}`;
    const bays = metric(bay('28 in', '41 1/16 in'), bay('88 in', '93 in'), bay('28 1/8 in', '41 1/8 in'));
    expect(measurementsOf(bays).things.map((thing) => thing.readings.length)).toEqual([2, 1]);
  });

  test('never mixes parts, kinds or names', () => {
    const gap = (part: string, where: string) =>
      `kind: gaps, part: ${part}, state: before, where: ${where}, readings: [4 mm]`;
    expect(
      measurementsOf(
        metric(
          gap('frame', 'a'),
          gap('frame', 'b'),
          gap('cowl', 'a'),
          'kind: length, part: frame, state: before, of: a, readings: [4 mm]',
        ),
      ).things,
    ).toHaveLength(4);
  });
});

describe('left and right', () => {
  const parts = Object.fromEntries(
    ['door-left', 'door-right', 'hood'].map((part) => [
      `parts/${part}.md`,
      `---\nname: ${part}\ngroup: Doors\n---\n`,
    ]),
  );
  const gap = (part: string, where: string, state: string, readings: string) =>
    `kind: gaps, part: ${part}, state: ${state}, where: "${where}", readings: [${readings}]`;

  test('are paired by the part’s name or by the gap’s, and compared as last read', () => {
    const record = recordOf({
      ...parts,
      'log/2025-03-03.md': day(
        gap('door-left', 'Rear edge', 'before', '8 mm, 6 mm'),
        gap('door-right', 'rear edge', 'before', '4 mm, 4 mm'),
        gap('hood', 'to cowl, left', 'after', '4 mm, 5 mm'),
        gap('hood', 'to cowl, right', 'after', '4 mm, 4 mm'),
        gap('door-right', 'front edge', 'after', '4 mm, 4 mm'),
      ),
    });
    const pairs = gapPairs(measurementsOf(record).things);
    expect(pairs.map(({ left, right }) => [left.part, right.part])).toEqual([
      ['door-left', 'door-right'],
      ['hood', 'hood'],
    ]);
    expect(pairs.map(({ sides }) => sides.ok && [sides.value.mean.value, sides.value.widest?.value])).toEqual(
      [
        [3, 4],
        [0.5, 1],
      ],
    );
  });

  test('are not compared at different stages of the work', () => {
    const record = recordOf({
      ...parts,
      'log/2025-03-03.md': day(
        gap('door-left', 'rear edge', 'after', '4 mm, 4 mm'),
        gap('door-right', 'rear edge', 'before', '4 mm, 4 mm'),
      ),
    });
    expect(gapPairs(measurementsOf(record).things)[0]?.sides).toMatchObject({ ok: false });
  });
});
