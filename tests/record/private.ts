// A small record in which every field that is not for everybody holds words or an amount of its own, to be looked for.
import type { z } from 'zod';
import { type Opened, openRecord } from '../../src/record/open.ts';
import type { Audience } from '../../src/record/schema/fields.ts';
import { sheets } from '../../src/record/schema/sheets.ts';
import { bare, said } from '../../src/record/schema-at.ts';

/** Begin every planted text: of the shop’s fields, of the owner’s, and of what stands in a picture’s file. */
export const SHOP_WORD = 'quernstave';
export const OWNER_WORD = 'yaffletop';
export const CAMERA_WORD = 'gudgeonpin';

/** Amounts of the owner’s fields: nowhere in the history. */
export const OWNER_AMOUNTS = [
  '61234',
  '1516.17',
  '71.93',
  '6.37',
  '4321.09',
  '87.61',
  '41.37',
  '33.77',
  '19.87',
  '57.13',
];
/** The shop’s pay, and what two and a half hours come to at it. */
export const SHOP_AMOUNTS = ['46.83', '117.08'];

const own = (field: string) => `${OWNER_WORD} ${field}`;
const shop = (field: string) => `${SHOP_WORD} ${field}`;

/** The record’s texts. Pictures are named by their camera’s word. */
export const PRIVATE = {
  'car.md': `---
name: Aldermere Fourteen
built: "1934"
bodied-by: Tarrowby
numbers: { chassis: 14/1187 }
owner: { name: ${own('name')}, contact: ${shop('owner contact')} }
opened: 2025-02-03
units: inch
currency: USD
agreed:
  - { on: 2025-02-03, amount: 61234, note: ${own('agreed note')} }
ask-above: 4321.09
aim: To be driven.
---

Found in a barn. <!-- ${SHOP_WORD} remark in the story -->

<!-- ${SHOP_WORD} remark -->
`,
  'shop.md': `---
shop: Harrow Bend Coachworks
people:
  - { id: tobias, name: Tobias Reeve, initials: T.R., contact: ${shop('contact')} }
  - { id: ines, name: Ines Marlow, initials: I.M. }
rates:
  - { from: 2025-01-01, rate: 71.93 }
  - { from: 2025-01-01, rate: 72.93, who: ines, work: timber }
pay:
  - { from: 2025-01-01, rate: 46.83 }
  - { from: 2025-01-01, rate: 47.83, who: ines, work: timber }
handling:
  - { from: 2025-01-01, kind: bought, share: 13% }
materials:
  - { from: 2025-01-01, per-hour: 6.37, cap: 1516.17 }
  - { from: 2026-01-01, of-labour: 4.3% }
tax:
  - { name: ${own('tax')}, rate: 7.3%, side: charged, on: [bought], from: 2025-01-01, by: line, rounding: half-up }
  - { name: ${own('held tax')}, rate: 3.1%, side: charged, on: [materials], from: 2025-01-01, by: line, included: true }
step: 15m
minimum: 30m
vendors:
  - { id: millrace, name: Millrace Metals, town: Lower Millrace, contact: ${shop('vendor contact')} }
---

${shop('words below the rules')}
`,
  'parts/cowl.md': `---
name: Cowl
group: Body panels
at: cowl
found: { on: 2025-02-10, condition: damaged, note: both lower corners gone }
fabric: original
planned:
  - { line: strip, do: Strip it, work: metal, hours: [2, 3, 5], spend: 41.37, outside: 33.77, hazards: [lead] }
  - { line: paint, do: Paint it, work: paint, hours: [4, 5, 9], fixed-price: 1516.17, after: [strip] }
  - { line: corners, do: Make the corners good, work: metal, hours: 6 }
---

Its edge was leaded. <!-- ${SHOP_WORD} remark in a part -->
`,
  'choices/corners.md': `---
question: New corners, or patches?
part: cowl
asked: 2025-03-01
settles: [cowl/corners]
options:
  - option: new
    name: New corners in steel
    way: new-made
    lines:
      - { do: Shape two corners, work: metal, hours: [5, 8, 14], spend: 41.37, outside: 33.77 }
      - { buy: Sheet steel, price: 87.61, freight: 19.87, tax: 7.7%, from: millrace }
    fixed-price: 4321.09
    keeps: 60%
    mark: NB 2025
    for: square edges
    against: less old metal
  - option: patches
    way: repair
    lines:
      - { do: Patch them, work: metal, hours: 3 }
decided: { option: new, on: 2025-03-05, by: "${own('name')}, by letter", reason: The old metal is too thin. }
---

Both were tried in card. <!-- ${SHOP_WORD} remark in a choice -->
`,
  'choices/paint.md': `---
question: Cellulose, or enamel?
part: cowl
asked: 2025-03-10
needed-by: 2025-12-01
options:
  - { option: cellulose, way: other, lines: [{ do: Spray it, work: paint, hours: [3, 4, 6] }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: paint, hours: [5, 7, 9] }] }
---
`,
  'log/2025-03-03.md': `---
by: tobias
hours:
  - { part: cowl, line: strip, work: metal, time: 2h 30m, note: paint off the top }
  - { part: cowl, line: strip, work: metal, time: 1h, no-charge: ${own('no charge')} }
  - { part: cowl, work: metal, time: 1h, exempt: true }
bought:
  - { what: Soft iron wire, from: millrace, part: cowl, price: 87.61, count: 2, freight: 19.87, tax: 5.51, discount: 4.43, deposit: 57.13, bill: ${own('bill')} }
  - { what: Rivets, from: millrace, part: cowl, price: 41.37, bill: ${own('second bill')}, exempt: true, paid-by: owner }
outside:
  - { what: Blast the cowl, from: millrace, part: cowl, price: 33.77, tax: 2.13, bill: ${own('third bill')}, exempt: true, paid-by: owner }
ordered:
  - { what: Top cloth, from: millrace, part: cowl, price: 87.61, bill: ${own('order')}, expected: 2025-12-01 }
photos:
  - { file: ${CAMERA_WORD}-1.jpg, part: cowl, caption: The cowl as it came., alt: A rusty cowl., shows: before, pair: side }
finished: [cowl/strip]
shop-only: ${shop('only')}
---

Stripped it. <!-- ${SHOP_WORD} remark in a day -->
`,
  'log/2025-04-07.md': `---
by: ines
hours:
  - { part: cowl, line: paint, work: paint, time: 2h }
received:
  - { what: Top cloth, from: millrace, part: cowl, price: 87.61, bill: ${own('came')} }
returned:
  - { what: Soft iron wire, from: millrace, part: cowl, price: 19.87, tax: 1.11, deposit: 57.13, bill: ${own('back')} }
left:
  - { line: cowl/paint, hours: [1, 2, 3], spend: 19.87 }
agreed:
  - { what: ${own('word')}, amount: 4321.09, how: ${own('by telephone')} }
paid:
  - { amount: 4321.09, how: ${own('transfer')} }
photos:
  - { file: ${CAMERA_WORD}-2.jpg, part: cowl, caption: The same in green., alt: A green cowl., shows: after, pair: side }
  - { file: ${CAMERA_WORD}-3.jpg, part: cowl }
---

First coat. ${own('name')} came to see it.
`,
};

/** The pictures that it names. */
export const PRIVATE_PHOTOS = ['2025-03-03', '2025-04-07', '2025-04-07'].map(
  (day, i) => `photos/${day}/${CAMERA_WORD}-${i + 1}.jpg`,
);

/** Opens it with more files. */
export function openPrivate(more: Record<string, string> = {}): Opened {
  const files = Object.entries({ ...PRIVATE, ...more }).map(([file, text]) => ({ file, text }));
  return openRecord({ files, photos: PRIVATE_PHOTOS, today: '2025-12-31' });
}

/** Names of every field of an audience that holds a value of its own, not more fields: `entry bought price`. */
export function fieldsFor(audience: Audience): string[] {
  return Object.entries(sheets).flatMap(([kind, sheet]) =>
    leaves(sheet, kind).flatMap(({ name, field }) => (said(field).audience === audience ? [name] : [])),
  );
}

function leaves(schema: z.ZodType, name: string): { name: string; field: z.ZodType }[] {
  const { shape, element, options = [] } = bare(schema);
  if (!shape) return [...(element ? [element] : []), ...options].flatMap((one) => leaves(one, name));
  return Object.entries(shape).flatMap(([key, field]) => {
    const within = leaves(field, `${name} ${key}`);
    return key === 'place' ? [] : within.length > 0 ? within : [{ name: `${name} ${key}`, field }];
  });
}

/** Names of every field in which a value stands. */
export function fieldsIn(value: unknown, name: string): string[] {
  if (Array.isArray(value)) return value.flatMap((one) => [name, ...fieldsIn(one, name)]);
  if (typeof value !== 'object' || value === null) return [name];
  return [name, ...Object.entries(value).flatMap(([key, one]) => fieldsIn(one, `${name} ${key}`))];
}
