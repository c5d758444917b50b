// Logs of every kind, made up for property tests: hours, bills, returns and payments under rules with every kind of rounding.
import fc from 'fast-check';
import { shopText } from './records.ts';

/** Handling, materials with a cap, tax paid and charged, by line and by statement. */
export const SHOP = shopText(
  `pay:
  - { from: 2025-01-01, rate: 34.99 }
step: 15m
handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
  - { from: 2025-02-01, kind: outside, share: 7.5% }
materials:
  - { from: 2025-01-01, per-hour: 3.55, cap: 40.00 }
  - { from: 2025-02-15, of-labour: 4.1% }
tax:
  - { name: Use tax, rate: 7.25%, side: paid, on: [bought, freight], from: 2025-01-01, by: statement }
  - { name: Sales tax, rate: 8.25%, side: charged, on: [bought, materials], from: 2025-01-01, by: line, rounding: down }
  - { name: Levy, rate: 0.35%, side: charged, on: [labour, outside, freight], from: 2025-01-20, by: statement, rounding: half-even }
`,
  `  - { from: 2025-01-01, rate: 77.77 }
  - { from: 2025-02-10, rate: 91.01, work: metal }`,
);

const money = fc.integer({ min: 0, max: 99_999 }).map((minor) => (minor / 100).toFixed(2));
const where = fc.constantFrom('part: cowl, ', 'part: frame, ', 'part: cowl, line: strip, ', '');
const vendor = fc.constantFrom('keld', 'millrace');
const hours = fc
  .tuple(where, fc.constantFrom('metal', 'timber'), fc.nat(600), fc.boolean())
  .map(
    ([at, work, time, free]) => `{ ${at}work: ${work}, time: ${time}m${free ? ', no-charge: ours' : ''} }`,
  );
const bought = fc
  .tuple(
    where,
    vendor,
    money,
    fc.integer({ min: 1, max: 40 }),
    fc.option(money),
    fc.option(money),
    fc.option(money),
  )
  .map(
    ([at, from, price, count, freight, tax, deposit]) =>
      `{ ${at}what: Wire, from: ${from}, price: ${price}, count: ${count / 4}, bill: b${freight ? `, freight: ${freight}` : ''}${tax ? `, tax: ${tax}` : ''}${deposit ? `, deposit: ${deposit}` : ''} }`,
  );
const outside = fc
  .tuple(where, vendor, money, fc.boolean())
  .map(
    ([at, from, price, own]) =>
      `{ ${at}what: Plating, from: ${from}, price: ${price}${own ? ', paid-by: owner' : ''} }`,
  );
const returned = fc
  .tuple(vendor, money, fc.option(money))
  .map(
    ([from, price, tax]) =>
      `{ what: Wire, from: ${from}, price: ${price}, bill: b${tax ? `, tax: ${tax}` : ''} }`,
  );
const paid = fc.nat(99_999).map((minor) => `{ amount: ${(minor / 100).toFixed(2)}, how: check }`);

/** The lists of an entry, each a list of lines as text. */
export type Lists = Record<string, string[]>;
export const lines: Record<string, fc.Arbitrary<string>> = { hours, bought, outside, returned, paid };
export const entry: fc.Arbitrary<Lists> = fc.record({
  hours: fc.array(hours, { maxLength: 4 }),
  bought: fc.array(bought, { maxLength: 4 }),
  outside: fc.array(outside, { maxLength: 2 }),
  returned: fc.array(returned, { maxLength: 1 }),
  paid: fc.array(paid, { maxLength: 1 }),
});
/** The day that many days after the first a log can have, January 5, 2025. */
export const dayAt = (number: number) => new Date(Date.UTC(2025, 0, 5 + number)).toISOString().slice(0, 10);

/** Entries by the number of their day, from 0 to 69. */
export const days: fc.Arbitrary<Record<string, Lists>> = fc.dictionary(
  fc.integer({ min: 0, max: 69 }).map(String),
  entry,
  { minKeys: 1, maxKeys: 6 },
);

/** The files of a record with such entries. */
export function textsOf(entries: Record<string, Lists>): Record<string, string> {
  const texts: Record<string, string> = { 'shop.md': SHOP };
  for (const [number, lists] of Object.entries(entries)) {
    texts[`log/${dayAt(Number(number))}.md`] = entryText(lists);
  }
  return texts;
}

export const logs = days.map(textsOf);

function entryText(lists: Lists): string {
  const filled = Object.entries(lists).filter(([, lines]) => lines.length > 0);
  return `---\n${filled.map(([name, lines]) => `${name}:\n${lines.map((line) => `  - ${line}\n`).join('')}`).join('')}---\n`;
}
