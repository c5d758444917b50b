// The car and the shop of a made-up record.
import { type Day, monthOf } from '../../../figures/days.ts';
import type { WrittenFile } from '../../../record/record.ts';

export const VENDORS = [
  'millrace',
  'penhale',
  'keld',
  'fairlea',
  'orrin',
  'quayside',
  'wexcombe',
  'stonegate',
];

/** Rates begin with the record, and rise in its last two years. */
export function shopFiles(first: Day): WrittenFile[] {
  const begin = `${monthOf(first)}-01`;
  return [
    {
      file: 'car.md',
      text: `---
name: Aldermere Fourteen
built: "1934"
style: Drophead coupe
numbers: { chassis: 14/1187, body: No. 218 }
owner: { name: Miriam Castell }
opened: ${first}
units: inch
currency: USD
agreed:
  - { on: ${first}, amount: 900000 }
ask-above: 2,500
aim: To be driven on dry days, and to keep what can still carry its load.
---

A record made up for timing, as long as three years in a shop make it.
`,
    },
    {
      file: 'shop.md',
      text: `---
shop: Harrow Bend Coachworks
town: Harrow Bend
people:
  - { id: tobias, name: Tobias Reeve, initials: T.R. }
  - { id: ines, name: Ines Marlow, initials: I.M. }
rates:
  - { from: ${begin}, rate: 75.00 }
  - { from: ${begin}, rate: 55.00, who: ines }
  - { from: 2024-01-01, rate: 78.00 }
  - { from: 2025-01-01, rate: 57.00, who: ines }
pay:
  - { from: ${begin}, rate: 34.00 }
  - { from: 2024-07-01, rate: 36.50 }
handling:
  - { from: ${begin}, kind: bought, share: 10% }
  - { from: ${begin}, kind: outside, share: 8% }
materials:
  - { from: ${begin}, per-hour: 3.50 }
tax:
  - { name: Sales tax, rate: 7%, side: charged, on: [bought, materials], from: ${begin}, by: line }
  - { name: County levy, rate: 0.25%, side: charged, on: [bought, materials], from: ${begin}, by: statement, rounding: half-even }
  - { name: Use tax, rate: 7%, side: paid, on: [bought], from: ${begin}, by: line }
step: 15m
minimum: 30m
pads:
  - { thickness: 1/16 in, count: 14 }
  - { thickness: 1/8 in }
vendors:
${VENDORS.map((id) => `  - { id: ${id}, name: ${id.charAt(0).toUpperCase()}${id.slice(1)} and Company, town: Harrow Bend }\n`).join('')}---
`,
    },
  ];
}
