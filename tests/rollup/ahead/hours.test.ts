import { describe, expect, it } from 'vitest';
import { rateOf, usualRate, workedSoFar } from '../../../src/rollup/ahead/hours.ts';
import { rollUp } from '../../../src/rollup/roll-up.ts';
import { recordOf } from '../records.ts';

const shop = (rates: string) => `---
shop: Harrow Bend Coachworks
people:
  - { id: tobias, name: Tobias Reeve }
  - { id: ines, name: Ines Marlow }
rates:
${rates}---
`;
const GENERAL = '  - { from: 2025-01-01, rate: 80.00 }\n';
const INES = '  - { from: 2025-01-01, rate: 60.00, who: ines }\n';
const LOG = `---
hours:
  - { part: cowl, work: trim, time: 3h, by: ines }
  - { part: cowl, work: trim, time: 1h, by: tobias }
---
`;

describe('an hour still to be worked', () => {
  it('is charged at the rate for whoever does it', () => {
    const record = recordOf({ 'shop.md': shop(GENERAL + INES) });
    expect(rateOf(record, 'trim', '2025-03-03')).toBe(8000);
    expect(rateOf(record, 'trim', '2024-12-31')).toBeUndefined();
  });

  it('is charged at the dearest rate of people where there is no other', () => {
    const record = recordOf({
      'shop.md': shop(`${INES}  - { from: 2025-01-01, rate: 75.00, who: tobias }\n`),
    });
    expect(rateOf(record, 'trim', '2025-03-03')).toBe(7500);
  });

  it('is weighed, for a forecast, by who has done this kind of work', () => {
    const record = recordOf({ 'shop.md': shop(GENERAL + INES), 'log/2025-03-03.md': LOG });
    const worked = workedSoFar(rollUp(record).lines);
    // (3 x 60 + 1 x 80) / 4
    expect(usualRate(record, worked, 'trim', '2025-03-04')).toBe(6500);
    expect(usualRate(record, worked, 'metal', '2025-03-04')).toBe(8000);
  });
});
