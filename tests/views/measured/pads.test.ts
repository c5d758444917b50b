// What is said of the pads. 1/16 in is 1.5875 mm; the plans themselves are proved elsewhere.
import { describe, expect, test } from 'vitest';
import { changeText, countText, padsText } from '../../../src/views/measured/pad-text.ts';
import { padsShown } from '../../../src/views/measured/pads.ts';
import { recordOf, shopText } from '../../rollup/records.ts';

const MOUNTS = ['L1', 'L2', 'L3', 'R1', 'R2', 'R3'];
const heights = (zs: readonly string[], more = 'within: 1/32 in') =>
  `measured:\n  - { kind: heights, part: frame, state: trial, points: [${zs
    .map((z, i) => `{ mount: ${MOUNTS[i]}, x: ${(i % 3) * 44} in, y: ${i < 3 ? 0 : 41} in, z: ${z} in }`)
    .join(', ')}], ${more} }\n`;
const pads = (stacks: Record<string, string>, state: string) =>
  `pads:\n${Object.entries(stacks)
    .map(([mount, stack]) => `  - { mount: ${mount}, stack: [${stack}], state: ${state}, part: frame }\n`)
    .join('')}`;
const EIGHTHS = Object.fromEntries(MOUNTS.map((mount) => [mount, '1/8 in']));
const LOW = ['0', '-3/32', '0', '0', '0', '0'];
const STOCK = 'pads:\n  - { thickness: 1/16 in, count: 4 }\n  - { thickness: 1/8 in }\n';
const shown = (log: Record<string, string>, shop = STOCK) => {
  const days = Object.fromEntries(
    Object.entries(log).map(([day, text]) => [`log/${day}.md`, `---\n${text}---\n`]),
  );
  const told = padsShown(recordOf({ 'shop.md': shopText(shop), ...days }));
  if (!told) throw new Error('pads were written down');
  return told;
};
const row = (told: ReturnType<typeof shown>, mount: string) => told.rows.find((each) => each.mount === mount);

describe('what is said of the pads', () => {
  const told = shown({
    '2025-03-03': pads({ ...EIGHTHS, R3: '1/8 in, 1/8 in' }, 'before'),
    '2025-03-04': `${heights(LOW)}${pads(EIGHTHS, 'trial')}`,
  });

  test('is the answer, what is left then, and the stock', () => {
    expect(told.answer).toBe('One stack of 6 to change: L2.');
    expect(told.remains).toBe(
      'Then no height is further than 1/64 in (0.4 mm) from one plane, with a twist of 0 in (0 mm). Asked is 1/32 in (0.8 mm) either way.',
    );
    expect(told.takes).toBe('From stock: 1 of 1/16 in.');
    expect(told.sides.map(({ side, rows }) => [side, rows.map(({ mount }) => mount)])).toEqual([
      ['Left', ['L1', 'L2', 'L3']],
      ['Right', ['R1', 'R2', 'R3']],
    ]);
    expect(told.stock).toBe('Pads in stock: 4 of 1/16 in; 1/8 in, as many as wanted.');
    expect(told.asOf).toEqual({ text: 'March 4, 2025, trial', to: 'day/2025-03-04.html' });
  });

  test('has a row for each mount: as found, as changed, as it is, and what to fit', () => {
    expect(row(told, 'L2')).toEqual({
      mount: 'L2',
      found: '1/8 in',
      changed: '',
      now: '1/8 in',
      height: '−3/32 in (−2.4 mm)',
      fit: '1/8 + 1/16 in',
      change: '1/16 goes in',
      after: '−1/32 in (−0.8 mm)',
    });
    expect(row(told, 'R3')).toMatchObject({
      found: '1/8 + 1/8 in',
      changed: 'March 4, 2025: 1/8 in',
      now: '1/8 in',
      fit: '1/8 in',
      change: '',
    });
  });

  test('has a drawing in words as well', () => {
    expect(told.picture?.description).toContain('L2: 1/8 in; 1/16 goes in.');
    expect(told.picture?.larger).toMatch(/drawn \d+ times too thick/);
  });

  test('lists every fit-up with its fewest changes', () => {
    expect(told.fitUps).toEqual([
      {
        day: 'March 4, 2025',
        to: 'day/2025-03-04.html',
        state: 'trial',
        furthest: '3/64 in (1.2 mm)',
        fewest: 'one stack: L2',
      },
    ]);
  });
});

describe('it says plainly', () => {
  const day = '2025-03-03';
  test.each([
    [
      'that nothing is to change',
      heights(['0', '0', '0', '0', '0', '0']),
      STOCK,
      'Nothing to change: every mount is where it should be.',
    ],
    [
      'that a tolerance is lacking',
      heights(LOW, 'note: none'),
      STOCK,
      'The reading doesn’t say within what the heights should lie, so no change can be worked out.',
    ],
    [
      'that the stock isn’t known',
      heights(LOW),
      '',
      'shop.md names no `pads` in stock, so no change can be worked out.',
    ],
    [
      'that no heights were read',
      '',
      STOCK,
      'No heights were read over these stacks yet, so no change can be worked out.',
    ],
  ])('%s', (_, reading, shop, answer) => {
    expect(shown({ [day]: `${reading}${pads(EIGHTHS, 'trial')}` }, shop).answer).toBe(answer);
  });

  test('that it cannot be done with these pads, with the nearest', () => {
    const odd = heights(['0', '-1/4', '0', '0', '1/4', '0'], 'within: 0.001 in');
    const tenths = Object.fromEntries(MOUNTS.map((mount) => [mount, '0.1 in']));
    const told = shown(
      { [day]: `${odd}${pads(tenths, 'trial')}` },
      'pads:\n  - { thickness: 0.1 in, count: 1 }\n',
    );
    expect(told.answer).toMatch(/^It cannot be done with these pads: .* The nearest changes \w+ stacks?: /);
    expect(told.remains).toMatch(/^Then no height is further than /);
  });

  test('that stacks were changed since, and proposes nothing then', () => {
    const told = shown({
      '2025-03-03': `${heights(LOW)}${pads(EIGHTHS, 'trial')}`,
      '2025-03-04': pads({ L2: '1/8 in, 1/16 in' }, 'after'),
    });
    expect(told.answer).toMatch(/^Stacks were changed since the heights were last read\./);
    expect(told.rows.map(({ change }) => change).join('')).toBe('');
    expect(row(told, 'L2')?.fit).toBe('1/8 + 1/16 in');
  });
});

describe('pads in words', () => {
  test('are ruled fractions, thousandths where they are none', () => {
    expect(padsText([3.175, 1.5875], 'inch')).toBe('1/8 + 1/16 in');
    expect(padsText([2.54], 'inch')).toBe('0.100 in');
    expect(padsText([3, 1.5], 'mm')).toBe('3.0 + 1.5 mm');
    expect(padsText([], 'mm')).toBe('none');
  });

  test.each([
    [{ takeOut: [], putIn: [1.5875] }, '1/16 goes in'],
    [{ takeOut: [], putIn: [1.5875, 1.5875] }, '1/16 + 1/16 go in'],
    [{ takeOut: [3.175], putIn: [] }, '1/8 comes out'],
    [{ takeOut: [3.175], putIn: [1.5875] }, '1/8 out, 1/16 in'],
    [{ takeOut: [], putIn: [] }, ''],
  ])('%j', (change, text) => {
    expect(changeText(change, 'inch')).toBe(text);
  });

  test('are counted in words up to ten', () => {
    expect([countText(1, 'stack'), countText(2, 'stack'), countText(12, 'stack')]).toEqual([
      'one stack',
      'two stacks',
      '12 stacks',
    ]);
  });
});

test('a record without pads has nothing to say of them', () => {
  expect(padsShown(recordOf({}))).toBeUndefined();
});
