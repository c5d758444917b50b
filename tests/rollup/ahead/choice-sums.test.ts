// What a choice foresees against what the same work and purchases are charged once they are logged.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planOf } from '../../../src/estimate/uncertain/choice/choice.ts';
import { meansOf } from '../../../src/estimate/uncertain/choice/draws.ts';
import { costAt } from '../../../src/estimate/uncertain/choice/expected.ts';
import { chargesOn } from '../../../src/rollup/ahead/charges.ts';
import { choiceAhead } from '../../../src/rollup/ahead/choice-sums.ts';
import { comparedChoice } from '../../../src/rollup/ahead/compared.ts';
import { rollUp } from '../../../src/rollup/roll-up.ts';
import { recordOf, shopText } from '../records.ts';

const RULES = `handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
  - { from: 2025-01-01, kind: outside, share: 8% }
materials:
  - { from: 2025-01-01, of-labour: 4% }
tax:
  - { name: Use tax, rate: 7%, side: paid, on: [bought, freight], from: 2025-01-01, by: line }
  - { name: Sales tax, rate: 7.25%, side: charged, on: [bought, labour, materials, freight], from: 2025-01-01, by: line }
`;

const choiceText = (lines: string) => `---
question: Which way?
part: cowl
asked: 2025-03-01
options:
  - { option: one, way: repair, lines: [${lines}] }
  - { option: two, way: leave, lines: [{ do: Wax it, work: metal, hours: 1 }] }
---
`;

const expected = (record: ReturnType<typeof recordOf>, option: string) => {
  const choice = record.choices[0];
  if (!choice) throw new Error('The record has a choice.');
  const plan = planOf(choiceAhead(choice, record, rollUp(record).lines, '2025-03-03').sums);
  return costAt(plan, option, meansOf(plan, 'pert'));
};

describe('an option of certain lines', () => {
  it('foresees what the log is charged, but for the cents of rounding line by line', () => {
    fc.assert(
      fc.property(
        fc.record({
          minutes: fc.integer({ min: 15, max: 3000 }),
          price: fc.integer({ min: 100, max: 500_000 }),
          freight: fc.integer({ min: 0, max: 20_000 }),
          outside: fc.integer({ min: 100, max: 500_000 }),
        }),
        ({ minutes, price, freight, outside }) => {
          const money = (amount: number) => (amount / 100).toFixed(2);
          const record = recordOf({
            'shop.md': shopText(RULES),
            'choices/way.md': choiceText(
              `{ do: Weld it, work: metal, hours: ${minutes}m }, { buy: Sheet, price: ${money(price)}, freight: ${money(freight)} }, { do: Plate it, outside: ${money(outside)} }`,
            ),
            'log/2025-03-03.md': `---
hours:
  - { part: cowl, work: metal, time: ${minutes}m, choice: way }
bought:
  - { what: Sheet, from: millrace, price: ${money(price)}, freight: ${money(freight)}, choice: way }
outside:
  - { what: Plate it, from: keld, price: ${money(outside)}, choice: way }
---
`,
          });
          const charged = rollUp(record).tables.choice.rows.find(({ key }) => key === 'way')?.charged;
          // Each of a dozen lines is rounded once to the cent.
          expect(Math.abs(expected(record, 'one') - (charged ?? Number.NaN))).toBeLessThan(7);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is worked by hand', () => {
    const record = recordOf({
      'shop.md': shopText(RULES),
      'choices/way.md': choiceText(
        '{ do: Weld it, work: metal, hours: 10, spend: 100 }, { buy: Sheet, price: 50, tax: 3% }',
      ),
    });
    // 10 h x 85.00 = 850.00; + 4% materials = 884.00; + 7.25% = 948.09
    // 100.00 x 1.07 x 1.10 x 1.0725 = 126.23325; 50.00 x 1.03 x 1.10 x 1.0725 = 60.757125
    expect(expected(record, 'one') / 100).toBeCloseTo(948.09 + 126.23325 + 60.757125, 6);
  });
});

describe('the rules ahead', () => {
  it('charge no materials once their cap is used up', () => {
    const record = recordOf({
      'shop.md': shopText('materials:\n  - { from: 2025-01-01, per-hour: 3.50, cap: 7 }\n'),
      'log/2025-03-03.md': '---\nhours:\n  - { part: cowl, work: metal, time: 2h }\n---\n',
    });
    const { lines } = rollUp(record);
    expect(chargesOn(record, [], '2025-03-04')).toMatchObject({
      materials: { hour: 350, share: 0 },
      materialsLeft: 700,
    });
    expect(chargesOn(record, lines, '2025-03-04')).toMatchObject({
      materials: { hour: 0, share: 0 },
      materialsLeft: 0,
    });
  });

  it('put kinds of work that are charged alike into one rate, and name those that have none', () => {
    const record = recordOf({
      'shop.md': shopText(
        '',
        '  - { from: 2025-01-01, rate: 85.00, work: metal }\n  - { from: 2025-01-01, rate: 85.00, work: timber }\n  - { from: 2025-01-01, rate: 50.00, work: research }',
      ),
      'choices/way.md': choiceText(
        '{ do: Weld it, work: metal, hours: 1 }, { do: Fit it, work: timber, hours: 1 }, { do: Look it up, work: research, hours: 1 }, { do: Paint it, work: paint, hours: 1 }',
      ),
    });
    const choice = record.choices[0];
    const ahead = choice && choiceAhead(choice, record, [], '2025-03-03');
    expect(ahead?.rates.map(({ rate, works }) => [rate, works])).toEqual([
      [8500, ['metal', 'timber']],
      [5000, ['research']],
    ]);
    expect(ahead?.noRate).toEqual(['paint']);
  });
});

describe('a choice of the record', () => {
  it('gives the same figures at every build', () => {
    const text = choiceText('{ do: Weld it, work: metal, hours: [4, 6, 11] }');
    const figures = () => {
      const record = recordOf({ 'choices/way.md': text });
      const choice = record.choices[0];
      return choice && comparedChoice(choice, record, rollUp(record).lines).comparison?.options;
    };
    expect(figures()).toEqual(figures());
    expect(figures()).toHaveLength(2);
  });
});
