// Whole small records as text, for tests of the sums: a shop with no tax, no handling and one rate of 85.00.
import { openRecord } from '../../src/record/open.ts';
import type { CarRecord } from '../../src/record/record.ts';

const PLAIN = {
  'car.md': `---
name: Aldermere Fourteen
built: "1934"
opened: 2025-02-03
units: inch
currency: USD
agreed:
  - { on: 2025-02-03, amount: 5000 }
  - { on: 2025-04-02, amount: 700 }
---
`,
  'shop.md': shopText(''),
  'parts/cowl.md': `---
name: Cowl
group: Body panels
planned:
  - { line: strip, do: Strip it, work: metal, hours: [2, 3, 5] }
  - { line: lead, do: Fill the low spots, work: metal, hours: 6 }
---
`,
  'parts/frame.md': `---
name: Frame
group: Chassis
---
`,
};

/** The shop's file with more rules; `rates` may be given anew. */
export function shopText(more: string, rates = '  - { from: 2025-01-01, rate: 85.00 }'): string {
  return `---
shop: Harrow Bend Coachworks
people:
  - { id: tobias, name: Tobias Reeve }
rates:
${rates}
vendors:
  - { id: millrace, name: Millrace Metals }
  - { id: keld, name: Keld Fasteners }
${more}---
`;
}

/** The record of these texts over the plain ones. A text that couldn't be read whole fails the test. */
export function recordOf(texts: Record<string, string>, order?: (files: string[]) => string[]): CarRecord {
  const all: Record<string, string> = { ...PLAIN, ...texts };
  const names = Object.keys(all);
  const files = (order?.(names) ?? names).map((file) => ({ file, text: all[file] ?? '' }));
  const { record, problems } = openRecord({ files, photos: [], today: '2026-12-31' });
  const unread = problems.filter(({ place }) => record?.unread.has(place.file));
  if (!record || unread.length > 0) throw new Error(problems.map(({ reason }) => reason).join('\n'));
  return record;
}
