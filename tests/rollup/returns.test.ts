import { describe, expect, it } from 'vitest';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf, shopText } from './records.ts';

const log = (lines: string) => `---\n${lines}\n---\n`;
const linesOf = (texts: Record<string, string>) =>
  rollUp(recordOf(texts)).lines.map(({ kind, cost, charged }) => [kind, cost, charged]);

describe('what came back', () => {
  const TAXED = shopText(
    `handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
  - { from: 2025-04-01, kind: bought, share: 20% }
tax:
  - { name: Use tax, rate: 7%, side: paid, on: [bought], from: 2025-01-01, by: line }
`,
  );

  it('follows the rules of the day it was bought, so that a whole return leaves nothing', () => {
    const { total } = rollUp(
      recordOf({
        'shop.md': TAXED,
        'log/2025-03-31.md': log('bought:\n  - { what: Wire, from: keld, price: 10.00, bill: a }'),
        'log/2025-04-02.md': log('returned:\n  - { what: Wire, from: keld, price: 10.00, bill: a }'),
      }),
    );
    expect([total.cost, total.charged, total.lines.length]).toEqual([0, 0, 6]);
  });

  it('of a bill that named its tax takes back only the tax that it names', () => {
    const lines = linesOf({
      'shop.md': TAXED,
      'log/2025-04-02.md': log('bought:\n  - { what: Wire, from: keld, price: 10.00, tax: 0.70 }'),
      'log/2025-04-03.md': log('returned:\n  - { what: wire, from: keld, price: 10.00 }'),
    });
    // handling 20% of 10.70, then 20% of 10.00
    expect(lines).toEqual([
      ['bought', 1000, 1000],
      ['paid-tax', 70, 70],
      ['handling', 0, 214],
      ['bought', -1000, -1000],
      ['handling', 0, -200],
    ]);
  });

  it('of what the owner paid is the owner’s', () => {
    const rollup = rollUp(
      recordOf({
        'shop.md': TAXED,
        'log/2025-04-02.md': log(
          'bought:\n  - { what: Tires, from: keld, price: 1395.00, deposit: 5.00, paid-by: owner }',
        ),
        'log/2025-04-03.md': log('returned:\n  - { what: Tires, from: keld, price: 1395.00 }'),
      }),
    );
    expect(
      rollup.lines.map(({ text, cost, charged, paidByOwner }) => [text, cost, charged, paidByOwner]),
    ).toEqual([
      ['Tires ($1,400.00 paid by the owner)', 0, 0, true],
      ['Returned: Tires ($1,395.00 back to the owner)', 0, 0, true],
    ]);
    expect(rollup.depositsOut).toEqual([]);
  });
});

describe('tax worked out on a whole bill', () => {
  const RULE = shopText(
    `tax:
  - { name: Use tax, rate: 7%, side: paid, on: [bought], from: 2025-01-01, by: statement }
`,
  );
  const two = `bought:
  - { what: Wire, from: keld, price: 0.47, bill: a }
  - { what: Rod, from: keld, price: 0.47, bill: a }`;

  it('goes by vendor, number and day', () => {
    const taxes = rollUp(
      recordOf({
        'shop.md': RULE,
        'log/2025-03-03.md': log(`${two}\n  - { what: Rod, from: millrace, price: 0.47, bill: a }`),
        'log/2025-03-04.md': log(two),
      }),
    ).lines.filter(({ kind }) => kind === 'paid-tax');
    // 0.94 x 7% = 0.0658 on each bill of two, 0.47 x 7% = 0.0329 on the other vendor's
    expect(taxes.map(({ cost, vendor }) => [cost, vendor])).toEqual([
      [4, 'keld'],
      [3, 'keld'],
      [3, 'millrace'],
      [4, 'keld'],
      [3, 'keld'],
    ]);
  });
});

describe('deposits', () => {
  const BOUGHT = log(`bought:
  - { what: Water pump, from: millrace, price: 80.00, deposit: 60.00, bill: "3312" }
  - { what: Generator, from: millrace, price: 90.00, deposit: 75.00, bill: "3312" }
  - { what: Drum, from: keld, price: 8.00, deposit: 20.00 }`);
  const out = (returned: string) =>
    rollUp(
      recordOf({ 'log/2025-03-03.md': BOUGHT, 'log/2025-03-09.md': log(`returned:\n${returned}`) }),
    ).depositsOut.map(({ text, amount }) => [text, amount]);

  it('are out until they come back, largest first, and count as spent', () => {
    const { depositsOut, total } = rollUp(recordOf({ 'log/2025-03-03.md': BOUGHT }));
    expect(depositsOut.map(({ text, amount }) => [text, amount])).toEqual([
      ['Generator', 7500],
      ['Water pump', 6000],
      ['Drum', 2000],
    ]);
    expect(depositsOut[0]).toMatchObject({
      vendor: 'millrace',
      day: '2025-03-03',
      place: { file: 'log/2025-03-03.md', line: 4 },
    });
    expect([total.cost, total.charged]).toEqual([33300, 33300]);
  });

  it('are found by their bill, the same words first, and what is left over goes to the rest of the bill', () => {
    expect(out('  - { what: generator, from: millrace, deposit: 75.00, bill: "3312" }')).toEqual([
      ['Water pump', 6000],
      ['Drum', 2000],
    ]);
    expect(out('  - { what: Generator, from: millrace, deposit: 100.00, bill: "3312" }')).toEqual([
      ['Water pump', 3500],
      ['Drum', 2000],
    ]);
  });

  it('are found by words where no bill is named or the bill is unknown', () => {
    expect(out('  - { what: drum, from: keld, deposit: 5.00, bill: "9" }')).toEqual([
      ['Generator', 7500],
      ['Water pump', 6000],
      ['Drum', 1500],
    ]);
  });

  it('that come back before they were given are none of these', () => {
    const early = log('returned:\n  - { what: Drum, from: keld, deposit: 20.00 }');
    const record = recordOf({ 'log/2025-03-01.md': early, 'log/2025-03-03.md': BOUGHT });
    expect(rollUp(record).depositsOut).toHaveLength(3);
  });

  it('of another vendor stay out', () => {
    expect(out('  - { what: Drum, from: millrace, deposit: 20.00 }')).toHaveLength(3);
  });
});

describe('orders', () => {
  it('are open until received by the same words from the same vendor, one for one', () => {
    const { openOrders } = rollUp(
      recordOf({
        'log/2025-03-03.md': log(`ordered:
  - { what: Top cloth, from: keld, part: cowl, expected: 2025-05-01, price: 400.00 }
  - { what: Top cloth, from: millrace }
  - { what: Binding, from: keld }`),
        'log/2025-03-09.md': log(`received:
  - { what: "TOP cloth ", from: keld }
ordered:
  - { what: Binding, from: keld }`),
        'log/2025-03-10.md': log('received:\n  - { what: Binding, from: keld }'),
      }),
    );
    expect(openOrders.map(({ what, vendor, ordered }) => [what, vendor, ordered])).toEqual([
      ['Top cloth', 'millrace', '2025-03-03'],
      ['Binding', 'keld', '2025-03-09'],
    ]);
  });

  it('keep what was said of them', () => {
    const written =
      'ordered:\n  - { what: Cloth, from: keld, part: cowl, expected: 2025-05-01, price: 400.00 }';
    const { openOrders } = rollUp(recordOf({ 'log/2025-03-03.md': log(written) }));
    expect(openOrders).toEqual([
      {
        what: 'Cloth',
        vendor: 'keld',
        part: 'cowl',
        ordered: '2025-03-03',
        expected: '2025-05-01',
        price: 40000,
        place: { file: 'log/2025-03-03.md', line: 3, column: 5 },
      },
    ]);
  });

  it('are not closed by what came before they were placed', () => {
    const { openOrders } = rollUp(
      recordOf({
        'log/2025-03-03.md': log('received:\n  - { what: Cloth, from: keld }'),
        'log/2025-03-09.md': log('ordered:\n  - { what: Cloth, from: keld }'),
      }),
    );
    expect(openOrders).toHaveLength(1);
  });
});
