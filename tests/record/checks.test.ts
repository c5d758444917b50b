import { describe, expect, it } from 'vitest';
import { openSmall, SMALL } from './small.ts';

const rulesOf = (changed: Record<string, string>) => openSmall(changed).problems.map(({ rule }) => rule);
const day = (text: string) => `---\n${text}\n---\n`;
const asShop = (more: string) => SMALL['shop.md'].replace(/---\n$/, `${more}\n---\n`);

describe('a check', () => {
  it('finds nothing in a small record without a mistake', () => {
    expect(openSmall().problems).toEqual([]);
  });

  it('says one thing of one mistake, and nothing of what follows from it', () => {
    const shop = SMALL['shop.md'].replace('name: Millrace Metals', 'nme: Millrace Metals');
    expect(rulesOf({ 'shop.md': shop })).toEqual(['unknown-key']);
    const part = SMALL['parts/cowl.md'].replace('hours: [2, 3, 5]', 'hours: [5, 3, 2]');
    expect(rulesOf({ 'parts/cowl.md': part })).toEqual(['unexpected-value']);
    const rates = SMALL['shop.md'].replace('rate: 80', 'rate: 80.005');
    expect(rulesOf({ 'shop.md': rates })).toEqual(['unexpected-value']);
  });

  it('stays silent on a picture, an order and a deposit while an entry can’t be read', () => {
    const ordered = day('ordered:\n  - { what: Top cloth, from: millrace, expected: 2025-04-01 }');
    expect(rulesOf({ 'log/2025-03-04.md': ordered })).toEqual(['order-overdue']);
    const wrong = day('received:\n  - { what: Top cloth, frm: millrace }');
    expect(rulesOf({ 'log/2025-03-04.md': ordered, 'log/2025-03-20.md': wrong })).toEqual(['unknown-key']);
  });
});

describe('hours', () => {
  it('of exactly 14 and of exactly 24 hours pass, a minute more does not', () => {
    // The small record has 3 h 30 m on 2025-03-03 already; a second entry of the day adds to it.
    const more = (time: string) => ({
      'log/2025-03-03-b.md': day(`hours:\n  - { work: shop, time: ${time} }`),
    });
    expect(rulesOf(more('10h 30m'))).toEqual([]);
    expect(rulesOf(more('10h 31m'))).toEqual(['long-day']);
    expect(rulesOf(more('20h 30m'))).toEqual(['long-day']);
    expect(rulesOf(more('20h 31m'))).toEqual(['hours-fit-in-a-day']);
  });

  it('without charge need no rate', () => {
    const early = SMALL['shop.md'].replace('from: 2025-01-01', 'from: 2025-03-04');
    expect(rulesOf({ 'shop.md': early })).toEqual(['no-rate-for-the-day']);
    const free = SMALL['log/2025-03-03.md'].replace(
      'time: 3h 30m',
      'time: 3h 30m\n    no-charge: our mistake',
    );
    expect(rulesOf({ 'shop.md': early, 'log/2025-03-03.md': free })).toEqual([]);
  });
});

describe('money', () => {
  const bottle = day('bought:\n  - { what: Gas bottle, from: millrace, price: 31, deposit: 60, bill: "7" }');
  const back = (deposit: string) =>
    day(`returned:\n  - { what: Empty bottle, from: millrace, deposit: ${deposit}, bill: "7" }`);
  const late = { 'log/2025-06-30.md': day('by: tobias') };

  it('put down as a deposit is asked after until all of it is back, matched by its bill', () => {
    const with60 = { 'log/2025-03-04.md': bottle, ...late };
    expect(rulesOf(with60)).toEqual(['deposit-not-returned']);
    expect(rulesOf({ ...with60, 'log/2025-03-20.md': back('60') })).toEqual([]);
    const [half] = openSmall({ ...with60, 'log/2025-03-20.md': back('22.50') }).problems;
    // 60.00 − 22.50, and 118 days from March 4 to June 30: 27 + 30 + 31 + 30.
    expect(half?.reason).toBe(
      '$37.50 of deposit for `Gas bottle` is still out with `millrace` after 118 days.',
    );
  });

  it('can’t come back twice', () => {
    const twice = { 'log/2025-03-20.md': back('60'), 'log/2025-03-21.md': back('60') };
    expect(rulesOf({ 'log/2025-03-04.md': bottle, ...twice })).toEqual(['returned-more-than-bought']);
  });

  it('of a bill for the left and the right side, a line each, is no bill logged twice', () => {
    const right = SMALL['parts/cowl.md'].replace('Cowl', 'Frame');
    const both = day(
      ['cowl', 'frame']
        .map((part) => `  - { what: Hinge, from: millrace, part: ${part}, price: 9, bill: "8" }`)
        .reduce((text, line) => `${text}\n${line}`, 'bought:'),
    );
    expect(rulesOf({ 'parts/frame.md': right, 'log/2025-03-04.md': both })).toEqual([]);
    expect(
      rulesOf({ 'parts/frame.md': right, 'log/2025-03-04.md': both, 'log/2025-03-05.md': both }),
    ).toEqual(['bill-logged-twice', 'bill-logged-twice']);
  });

  it('above what is asked for needs a word of the 30 days before, and the sum of the bill counts', () => {
    const car = SMALL['car.md'].replace('agreed:', 'ask-above: 500\nagreed:');
    const bill = day(
      'bought:\n  - { what: Steel, from: millrace, price: 300, bill: "9" }\n  - { what: Wire, from: millrace, price: 201, bill: "9" }',
    );
    const word = day('agreed:\n  - { what: Steel, how: by telephone }');
    expect(rulesOf({ 'car.md': car, 'log/2025-05-01.md': bill })).toEqual(['spend-without-word']);
    // April 1 is 30 days before May 1, March 31 is 31.
    expect(rulesOf({ 'car.md': car, 'log/2025-05-01.md': bill, 'log/2025-04-01.md': word })).toEqual([]);
    expect(rulesOf({ 'car.md': car, 'log/2025-05-01.md': bill, 'log/2025-03-31.md': word })).toEqual([
      'spend-without-word',
    ]);
  });

  it('that is spent needs a word that goes up so far, or one on the choice it follows from', () => {
    const car = SMALL['car.md'].replace('agreed:', 'ask-above: 500\nagreed:');
    const spent = (line: string) => ({ 'car.md': car, 'log/2025-05-01.md': day(line) });
    const steel = 'bought:\n  - { what: Steel, from: millrace, price: 501 }';
    const word = (line: string) => ({ 'log/2025-04-20.md': day(`agreed:\n  - ${line}`) });
    expect(rulesOf({ ...spent(steel), ...word('{ what: Steel, amount: 501, how: by letter }') })).toEqual([]);
    const [low] = openSmall({
      ...spent(steel),
      ...word('{ what: Steel, amount: 400, how: by letter }'),
    }).problems;
    expect(low?.reason).toBe(
      'This bill of `millrace` is $501.00, above $500.00, and what is agreed goes up to $400.00.',
    );
    expect(low?.related?.map(({ file }) => file)).toEqual(['car.md', 'log/2025-04-20.md']);
  });

  it('that is bespoken needs the word when it is ordered, and is told of once', () => {
    const car = SMALL['car.md'].replace('agreed:', 'ask-above: 500\nagreed:');
    const order = day('ordered:\n  - { what: Top cloth, from: millrace, price: 900 }');
    const come = day('bought:\n  - { what: Top Cloth, from: millrace, price: 900 }');
    const both = { 'car.md': car, 'log/2025-04-01.md': order, 'log/2025-06-20.md': come };
    const found = openSmall(both).problems.filter(({ rule }) => rule === 'spend-without-word');
    expect(found.map(({ place }) => place.file)).toEqual(['log/2025-04-01.md']);
    expect(found[0]?.reason).toMatch(/^This order from `millrace` is \$900\.00, above \$500\.00, and no/);
    const word = day('agreed:\n  - { what: Top cloth, how: by letter }');
    // More than thirty days before the bill, and the day before the order.
    expect(rulesOf({ ...both, 'log/2025-03-31.md': word })).not.toContain('spend-without-word');
  });

  it('of tax may differ by a cent from the newest rule of its name, and not by two', () => {
    const shop = asShop(
      'tax:\n  - { name: Use tax, rate: 7%, side: paid, on: [bought], from: 2025-01-01, by: line }\n  - { name: Use tax, rate: 8%, side: paid, on: [bought], from: 2025-03-04, by: line }',
    );
    const billed = (tax: string) => ({
      'shop.md': shop,
      'log/2025-03-04.md': day(`bought:\n  - { what: Steel, from: millrace, price: 100, tax: ${tax} }`),
    });
    // 8% of 100.00 are 8.00.
    expect(rulesOf(billed('8.00'))).toEqual([]);
    expect(rulesOf(billed('8.01'))).toEqual([]);
    expect(rulesOf(billed('8.02'))).toEqual(['tax-against-rules']);
    expect(rulesOf(billed('7.00'))).toEqual(['tax-against-rules']);
  });
});

describe('rates', () => {
  it('for a person and for a kind of work tie unless a rule for both begins by then', () => {
    const rates = (more: string) =>
      SMALL['shop.md'].replace(
        'vendors:',
        `  - { from: 2025-02-01, rate: 60, who: tobias }\n  - { from: 2025-02-01, rate: 50, work: research }\n${more}vendors:`,
      );
    expect(rulesOf({ 'shop.md': rates('') })).toEqual(['rate-rules-tie']);
    const both = (from: string) => `  - { from: ${from}, rate: 55, who: tobias, work: research }\n`;
    expect(rulesOf({ 'shop.md': rates(both('2025-02-01')) })).toEqual([]);
    expect(rulesOf({ 'shop.md': rates(both('2025-02-02')) })).toEqual(['rate-rules-tie']);
  });
});

describe('diagonals', () => {
  const frame = (d1: string, d2: string) =>
    rulesOf({
      'log/2025-03-04.md': day(
        `measured:\n  - { kind: diagonals, part: cowl, state: before, a: 4 in, b: 3 in, d1: ${d1}, d2: ${d2} }`,
      ),
    });

  it('lie between the difference and the sum of two sides', () => {
    // Sides 3 and 4: a diagonal of 5 makes it square (Euclid I.47); 1 and 7 are flat (Euclid I.20).
    expect(frame('5 in', '5 in')).toEqual([]);
    expect(frame('6.99 in', '1.01 in')).toEqual([]);
    expect(frame('7 in', '5 in')).toEqual(['reading-out-of-sense']);
    expect(frame('5 in', '1 in')).toEqual(['reading-out-of-sense']);
  });
});

describe('a plan', () => {
  const plan = (lines: number, last: string) =>
    `---\nname: Frame\ngroup: Chassis\nplanned:\n${Array.from(
      { length: lines },
      (_, i) =>
        `  - { line: l${i}, do: Work, work: metal, hours: 1, after: [${i === 0 ? last : `l${i - 1}`}] }\n`,
    ).join('')}---\n`;

  it('thousands of lines deep is followed to its end', () => {
    expect(rulesOf({ 'parts/frame.md': plan(5000, '') })).toEqual([]);
    expect(rulesOf({ 'parts/frame.md': plan(5000, 'l4999') })).toEqual(['line-waits-in-a-circle']);
  });

  it('names each circle once, also that of a line that waits for itself', () => {
    expect(openSmall({ 'parts/frame.md': plan(1, 'l0') }).problems.map(({ reason }) => reason)).toEqual([
      'These lines wait for each other in a circle: `frame/l0` → `frame/l0`.',
    ]);
  });
});
