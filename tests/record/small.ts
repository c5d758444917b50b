// A whole small record, as a writer would write it, for tests that change a line of it.
import { type Opened, openRecord } from '../../src/record/open.ts';

export const SMALL = {
  'car.md': `---
name: Aldermere Fourteen
built: 1934
opened: 2025-02-03
units: inch
currency: USD
agreed:
  - { on: 2025-02-03, amount: 10000 }
---

Found in a barn.
`,
  'shop.md': `---
shop: Harrow Bend Coachworks
people:
  - { id: tobias, name: Tobias Reeve }
rates:
  - { from: 2025-01-01, rate: 80 }
vendors:
  - { id: millrace, name: Millrace Metals }
---
`,
  'parts/cowl.md': `---
name: Cowl
group: Body panels
planned:
  - { line: strip, do: Strip it, work: metal, hours: [2, 3, 5] }
  - { line: lead, do: Fill the low spots, work: metal, hours: 6, after: [strip] }
---
`,
  'log/2025-03-03.md': `---
hours:
  - part: cowl
    line: strip
    work: metal
    time: 3h 30m
bought:
  - { what: 1/4 in bolts, from: millrace, part: cowl, price: 1.10, count: 007, bill: 0310 }
finished: [cowl/strip]
---

Stripped it.
`,
};

/** Opens the small record with some of its files changed or added. */
export function openSmall(changed: Record<string, string> = {}): Opened {
  const files = Object.entries({ ...SMALL, ...changed }).map(([file, text]) => ({ file, text }));
  return openRecord({ files, photos: [], today: '2025-12-31' });
}
