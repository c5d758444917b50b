// How a choice that has ended is told.
import { describe, expect, it } from 'vitest';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { keptShown, outcomeShown } from '../../src/views/choice-outcome.ts';
import { recordOf } from '../rollup/records.ts';

const told = (hours: string, time: string, finished: string) => {
  const record = recordOf({
    'choices/way.md': `---
question: Which way?
part: cowl
asked: 2025-03-01
options:
  - { option: one, name: Weld it, way: repair, lines: [{ do: Weld it, work: metal, hours: ${hours} }] }
  - { option: two, way: leave, lines: [{ do: Wax it, work: metal, hours: 1 }] }
decided: { option: one, on: 2025-03-01, by: the owner, reason: it can carry }
---
`,
    'log/2025-03-03.md': `---
hours:
  - { part: cowl, line: strip, work: metal, time: ${time}, choice: way }
${finished}---
`,
  });
  const rollup = rollUp(record);
  const [choice] = record.choices;
  return { outcome: choice && outcomeShown(choice, record, rollup), kept: keptShown(record, rollup) };
};

describe('a choice that has ended', () => {
  it('is told with what was expected, the range and what it took', () => {
    const { outcome, kept } = told('[2, 6, 10]', '6h 30m', 'finished: [cowl/strip]\n');
    // 6 h at 85.00 = 510.00 expected; 6.5 h = 552.50
    expect(outcome?.rows[0]).toMatchObject({ what: 'Money', expected: '$510', took: '$552.50' });
    expect(outcome?.rows[1]).toMatchObject({ what: 'Hours', took: '6 h 30 m' });
    expect(outcome?.sentence).toMatch(
      /^It ended inside its range: of 100 draws of what was foreseen, 6\d cost less than it took\.$/,
    );
    expect(kept?.sentence).toBe(
      'One choice has ended. 1 inside the range foreseen from one time in ten to nine in ten, 0 above it, 0 below; of many, eight in ten should end inside. Together they took 8% more than was expected.',
    );
    expect(kept?.rows[0]).toMatchObject({ choice: 'way', what: 'Weld it', took: '$552.50' });
  });

  it('is told as not ended while its lines are open, and is not counted', () => {
    const { outcome, kept } = told('[2, 6, 10]', '6h 30m', '');
    expect(outcome?.sentence).toBe('Not ended yet: Cowl: strip is not finished.');
    expect(kept).toBeUndefined();
  });
});
