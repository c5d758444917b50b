// What is still free, worked by hand beside each check.
import { describe, expect, it } from 'vitest';
import { freeOf } from '../../src/rollup/free.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { freeSentence } from '../../src/views/free.ts';
import { recordOf, shopText } from '../rollup/records.ts';

const RULES = shopText(`handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
tax:
  - { name: Use tax, rate: 7%, side: paid, on: [bought], from: 2025-01-01, by: line }
  - { name: Sales tax, rate: 7%, side: charged, on: [bought], from: 2025-01-01, by: line }
`);
const log = (ordered: string) => ({
  'shop.md': RULES,
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, work: metal, time: 10h }
ordered:
${ordered}
---
`,
});
const said = (texts: Record<string, string>) => {
  const record = recordOf(texts);
  return freeSentence(record, rollUp(record));
};
const CLOTH = '  - { what: Top cloth, from: keld, price: 200 }';

describe('what is still free', () => {
  it('is what was agreed, less what is spent and what open orders will be charged at', () => {
    const record = recordOf(log(CLOTH));
    // 10 h at 85.00; (200.00 + 14.00) x 1.1 = 235.40, and 7% of it 16.478; 5,700.00 - 850.00 - 251.88
    expect(freeOf(record, rollUp(record))).toEqual({
      agreed: 570000,
      spent: 85000,
      committed: 25188,
      free: 459812,
      orders: 1,
      unpriced: 0,
    });
    expect(said(log(CLOTH))).toBe(
      'Of $5,700.00 agreed, $850.00 is spent and $251.88 is committed by one open order; $4,598.12 is still free.',
    );
  });

  it('says of an order without a price that it isn’t counted, and of too many that they are too much', () => {
    expect(said(log(`${CLOTH}\n  - { what: Wire, from: keld }`))).toBe(
      'Of $5,700.00 agreed, $850.00 is spent and $251.88 is committed by one open order; $4,598.12 is still free. One open order names no price and is not counted.',
    );
    expect(
      said(log(`${CLOTH}\n  - { what: Hide, from: keld, price: 4,000 }`.replace('4,000', '"4,000"'))),
    ).toBe(
      // (4,000.00 + 280.00) x 1.1 = 4,708.00, and 7% of it 329.56; 850.00 + 251.88 + 5,037.56 - 5,700.00
      'Of $5,700.00 agreed, $850.00 is spent and $5,289.44 is committed by 2 open orders; that is $439.44 more than was agreed.',
    );
  });

  it('speaks of no order that came, and of no budget where none is agreed', () => {
    const come = {
      ...log(CLOTH),
      'log/2025-04-01.md': '---\nreceived:\n  - { what: Top cloth, from: keld }\n---\n',
    };
    expect(said(come)).toBe('Of $5,700.00 agreed, $850.00 is spent; $4,850.00 is still free.');
    const car = '---\nname: A\nbuilt: "1934"\nopened: 2025-02-03\nunits: inch\ncurrency: USD\n---\n';
    expect(said({ ...come, 'car.md': car })).toBe('$850.00 is spent; no budget is agreed.');
  });
});
