// A decided choice held against what was foreseen, with certain figures so that the answer is known by hand.
import { describe, expect, it } from 'vitest';
import { choicesSoFar, outcomeOf } from '../../../src/rollup/ahead/outcome.ts';
import { rollUp } from '../../../src/rollup/roll-up.ts';
import { recordOf } from '../records.ts';

const choice = (hours: string, decided: string) => `---
question: Which way?
part: cowl
asked: 2025-03-01
options:
  - { option: one, way: repair, lines: [{ do: Weld it, work: metal, hours: ${hours} }] }
  - { option: two, way: leave, lines: [{ do: Wax it, work: metal, hours: 1 }] }
${decided}---
`;
const DECIDED = 'decided: { option: one, on: 2025-03-01, by: the owner, reason: it can carry }\n';

const log = (time: string, finished: string) => `---
hours:
  - { part: cowl, line: strip, work: metal, time: ${time}, choice: way }
${finished}---
`;
const DONE = 'finished: [cowl/strip]\n';

const outcome = (hours: string, time: string, { decided = DECIDED, finished = DONE } = {}) => {
  const record = recordOf({
    'choices/way.md': choice(hours, decided),
    'log/2025-03-03.md': log(time, finished),
  });
  const rollup = rollUp(record);
  const [only] = record.choices;
  return { outcome: only && outcomeOf(only, record, rollup), all: choicesSoFar(record, rollup) };
};

describe('what a choice took', () => {
  it('is held against the expected figure of the way chosen', () => {
    const { outcome: held, all } = outcome('4', '6h');
    // 4 h and 6 h at 85.00
    expect(held).toMatchObject({
      ended: true,
      inside: false,
      money: { expected: 34_000, p10: 34_000, p90: 34_000, took: 51_000, below: 1 },
      hours: { expected: 4, took: 6 },
    });
    expect(all).toMatchObject({ inside: 0, over: 1, under: 0, ratio: 1.5 });
  });

  it('ends where its share of the draws lies', () => {
    // A range that is even about 6 h: half of it lies below 6 h.
    const { outcome: held, all } = outcome('[2, 6, 10]', '6h');
    expect(held?.money.below).toBeCloseTo(0.5, 1);
    expect(all).toMatchObject({ inside: 1, over: 0, under: 0, ratio: 1 });
  });

  it('has not ended while a line that was logged to it is open', () => {
    const { outcome: held, all } = outcome('4', '6h', { finished: '' });
    expect(held).toMatchObject({ ended: false, open: ['cowl/strip'] });
    expect(all).toMatchObject({ ended: [], ratio: undefined });
  });

  it('ends by the lines that it settles, where it names them', () => {
    const { outcome: held } = outcome('4', '6h', { decided: `settles: [strip, lead]\n${DECIDED}` });
    expect(held).toMatchObject({ ended: false, open: ['cowl/lead'] });
  });

  it('is nothing for an open choice', () => {
    expect(outcome('4', '6h', { decided: '' }).outcome).toBeUndefined();
  });
});
