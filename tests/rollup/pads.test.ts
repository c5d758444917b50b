// Stacks through the record, and what is proposed after a fit-up. The body lifts at a mount by what its stack grows:
// common practice of shimming. 1/16 in is 1.5875 mm.
import { describe, expect, test } from 'vitest';
import { fitUpsOf } from '../../src/rollup/measured/pads.ts';
import { stacksOf } from '../../src/rollup/measured/stacks.ts';
import { recordOf, shopText } from './records.ts';

const MOUNTS = ['L1', 'L2', 'L3', 'R1', 'R2', 'R3'];
const heights = (zs: readonly string[], more = 'within: 1/32 in', part = 'frame', state = 'trial') =>
  `  - { kind: heights, part: ${part}, state: ${state}, points: [${zs
    .map((z, i) => `{ mount: ${MOUNTS[i]}, x: ${(i % 3) * 44} in, y: ${i < 3 ? 0 : 41} in, z: ${z} in }`)
    .join(', ')}], ${more} }\n`;
const pads = (stacks: readonly string[], state: string, mounts = MOUNTS) =>
  stacks
    .map((stack, i) => `  - { mount: ${mounts[i]}, stack: [${stack}], state: ${state}, part: frame }\n`)
    .join('');
const EIGHTHS = MOUNTS.map(() => '1/8 in');
const STOCK = 'pads:\n  - { thickness: 1/16 in, count: 1 }\n  - { thickness: 1/8 in }\n';
const record = (log: Record<string, string>, shop = STOCK) => recordOf({ 'shop.md': shopText(shop), ...log });
const ODD = ['0', '-3/32', '0', '0', '0', '0'];

describe('the stack at a mount', () => {
  const whole = record({
    'log/2025-03-03.md': `---\npads:\n${pads(['1/8 in, 1/16 in', '', '1/8 in'], 'before', ['R10', 'R2', 'L3'])}---\n`,
    'log/2025-03-04.md': `---\npads:\n${pads(['1/16 in, 1/8 in', '1/16 in', '1/8 in'], 'trial', ['R10', 'R2', 'L4'])}---\n`,
  });

  test('is as found, as changed and as it is, mount by mount from the left front', () => {
    const stacks = stacksOf(whole);
    expect(stacks.map(({ mount }) => mount)).toEqual(['L3', 'L4', 'R2', 'R10']);
    expect(stacks.map(({ found }) => found?.stack.length)).toEqual([1, undefined, 0, 2]);
    expect(stacks.map(({ now }) => now.stack.length)).toEqual([1, 1, 1, 2]);
    // The same two pads the other way up are no change.
    expect(stacks.map(({ changed }) => changed.length)).toEqual([0, 0, 1, 0]);
  });
});

describe('a fit-up', () => {
  test('names the fewest stacks to change, from stock, with what remains', () => {
    const [fitUp] = fitUpsOf(
      record({ 'log/2025-03-03.md': `---\nmeasured:\n${heights(ODD)}pads:\n${pads(EIGHTHS, 'trial')}---\n` }),
    );
    if (!fitUp?.proposal.ok) throw new Error('there is a proposal');
    const { possible, proved, plan } = fitUp.proposal.value;
    expect([possible, proved, plan.changes]).toEqual([true, true, 1]);
    expect(plan.mounts.find(({ putIn }) => putIn.length > 0)).toMatchObject({
      id: 'L2',
      putIn: [1.5875],
      takeOut: [],
      height: expect.closeTo((-2 / 64) * 25.4, 9),
    });
    expect(plan.furthest.value).toBeLessThanOrEqual(25.4 / 32);
    expect(fitUp.tolerance).toBe(25.4 / 32);
  });

  test('says that it cannot be done with these pads, with the nearest', () => {
    const log = {
      'log/2025-03-03.md': `---\nmeasured:\n${heights(['0', '-1/4', '0', '0', '1/4', '0'], 'within: 0.001 in')}pads:\n${pads(
        EIGHTHS.map(() => '0.1 in'),
        'trial',
      )}---\n`,
    };
    const [fitUp] = fitUpsOf(record(log, 'pads:\n  - { thickness: 0.1 in, count: 1 }\n'));
    if (!fitUp?.proposal.ok) throw new Error('there is a nearest plan');
    expect(fitUp.proposal.value).toMatchObject({
      possible: false,
      why: expect.stringContaining('cannot be done with these pads'),
    });
    expect(fitUp.proposal.value.plan.furthest.value).toBeLessThan(25.4 / 4);
  });

  test('takes the stacks of the day that were in place for the reading, not those of after it', () => {
    const changed = ['1/8 in', '1/8 in, 1/16 in', '1/8 in', '1/8 in', '1/8 in', '1/8 in'];
    const [fitUp] = fitUpsOf(
      record({
        'log/2025-03-03.md': `---\nmeasured:\n${heights(ODD)}pads:\n${pads(EIGHTHS, 'trial')}${pads(changed, 'after')}---\n`,
      }),
    );
    expect(fitUp?.mounts.map(({ stack }) => stack?.stack.length)).toEqual([1, 1, 1, 1, 1, 1]);
  });

  test.each([
    ['no tolerance', heights(ODD, 'note: no word of it'), STOCK, 'doesn’t say within what'],
    ['no stock', heights(ODD), '', 'names no `pads` in stock'],
  ])('with %s says so instead', (_, reading, shop, why) => {
    const [fitUp] = fitUpsOf(
      record(
        { 'log/2025-03-03.md': `---\nmeasured:\n${reading}pads:\n${pads(EIGHTHS, 'trial')}---\n` },
        shop,
      ),
    );
    expect(fitUp?.proposal).toEqual({ ok: false, why: expect.stringContaining(why) });
  });

  test('with a stack that nobody wrote down says which', () => {
    const [fitUp] = fitUpsOf(
      record({
        'log/2025-03-03.md': `---\nmeasured:\n${heights(ODD)}pads:\n${pads(EIGHTHS.slice(1), 'trial', MOUNTS.slice(1))}---\n`,
      }),
    );
    expect(fitUp?.proposal).toMatchObject({ ok: false, why: expect.stringContaining('the stack at L1') });
  });

  test('is not a reading of another part, nor one from before any stack was known', () => {
    const log = {
      'log/2025-03-03.md': `---\nmeasured:\n${heights(ODD)}${heights(ODD, 'within: 1/32 in', 'cowl')}---\n`,
      'log/2025-03-04.md': `---\npads:\n${pads(EIGHTHS, 'before')}---\n`,
      'log/2025-03-05.md': `---\nmeasured:\n${heights(ODD)}${heights(ODD, 'within: 1/32 in', 'cowl')}---\n`,
    };
    expect(fitUpsOf(record(log)).map(({ measured }) => [measured.entry, measured.part])).toEqual([
      ['2025-03-05', 'frame'],
    ]);
  });
});
