// A small record for the tests of pages: two parts, a choice, bills with handling and two taxes, a deposit, an order.
import { currencyOf } from '../../src/figures/currency.ts';
import { readMinutes } from '../../src/figures/hours.ts';
import { readMoney } from '../../src/figures/money.ts';
import type { CarRecord } from '../../src/record/record.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf, shopText } from '../rollup/records.ts';

const TEXTS = {
  'shop.md': shopText(`handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
materials:
  - { from: 2025-01-01, per-hour: 3.50, cap: 600 }
step: 15m
tax:
  - { name: Sales tax, rate: 7%, side: charged, on: [bought], from: 2025-01-01, by: line, rounding: half-up }
  - { name: County levy, rate: 0.25%, side: charged, on: [bought], from: 2025-01-01, by: statement, rounding: half-even }
`),
  'parts/cowl.md': `---
name: Cowl
group: Body panels
at: cowl
found: { on: 2025-02-10, condition: damaged, note: both lower corners gone }
fabric: original
planned:
  - { line: strip, do: Strip it, work: metal, hours: [2, 3, 5], hazards: [lead] }
  - { line: lead, do: Fill the low spots, work: metal, hours: [4, 6, 9], spend: [20, 30, 45], after: [strip, frame/level] }
  - { line: paint, do: Paint it, work: paint, hours: 4 }
---
`,
  'parts/frame.md': `---
name: Frame
group: Chassis
planned:
  - { line: level, do: Level it, work: assembly, hours: [1, 2, 3] }
---
`,
  'choices/corners.md': `---
question: New corners, or patches?
part: cowl
asked: 2025-03-01
options:
  - option: new
    name: New corners in NB steel
    way: new-made
    lines:
      - { do: Shape two corners, work: metal, hours: [5, 8, 14], hazards: [hot-work] }
      - { buy: Sheet, price: 40, freight: [8, 10, 15], tax: 7%, from: millrace }
    wait: [2, 4, 9]
    keeps: 60%
    mark: NB 2025
    for: [square edges, full thickness]
  - option: patches
    way: repair
    lines:
      - { do: Patch them, work: metal, hours: 3 }
    can-fail: { chance: 25%, after: 40%, then: new }
decided: { option: new, on: 2025-03-05, by: "the owner, by letter", reason: The old metal is too thin. }
---

Both were tried in card.
`,
  'choices/paint.md': `---
question: Cellulose, or enamel?
part: [cowl, frame]
asked: 2025-03-10
needed-by: 2025-05-01
options:
  - { option: cellulose, way: other, lines: [{ do: Spray it, work: paint, hours: [3, 4, 6] }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: paint, hours: [5, 7, 9] }] }
---
`,
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, line: strip, work: metal, time: 3h 30m, note: paint off the top }
  - { work: shop, time: 1, no-charge: our own sweeping }
bought:
  - { what: 1/4 in bolts, from: millrace, part: cowl, price: 1.10, count: 7, tax: 0.54, freight: 2.00, bill: 310 }
  - { what: Water pump in exchange, from: keld, part: frame, price: 168, deposit: 60.00, bill: 12 }
ordered:
  - { what: Top cloth, from: keld, part: cowl, price: 240, expected: 2025-09-01 }
finished: [cowl/strip]
marks:
  - { mark: CW 1, what: Bolts, part: cowl, as: refit, count: 4 }
---

Stripped it.
`,
  'log/2025-04-07.md': `---
hours:
  - { part: cowl, line: lead, work: metal, time: 2h, choice: corners }
  - { part: frame, line: level, work: assembly, time: 45m }
left:
  - { line: cowl/lead, hours: [2, 3, 5] }
paid:
  - { amount: 400, how: check }
---

First corner.
`,
  'log/2025-05-02.md': `---
measured:
  - { kind: thickness, part: cowl, state: after, readings: [0.048 in, 0.047 in] }
---

Looked it over; no work.
`,
};

/** The record with some of its files written anew. */
export function viewed(changed: Record<string, string> = {}) {
  const record = recordOf({ ...TEXTS, ...changed });
  return { record, rollup: rollUp(record) };
}

export function partOf(record: CarRecord, id: string) {
  const part = record.parts.find((each) => each.id === id);
  if (!part) throw new Error(`no part ${id}`);
  return part;
}

const dollars = currencyOf('USD');

/** A printed amount read back into cents; an empty cell is nothing. */
export function cents(printed: string): number {
  if (printed === '' || !dollars) return 0;
  const read = readMoney(printed.replace('−', '-'), dollars);
  if (!read.ok) throw new Error(`${printed} is no amount`);
  return read.value;
}

/** A printed time read back into minutes. */
export function minutes(printed: string): number {
  if (printed === '') return 0;
  const read = readMinutes(printed);
  if (!read.ok) throw new Error(`${printed} is no time`);
  return read.value;
}

export const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
