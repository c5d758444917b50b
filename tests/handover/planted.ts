// A small record that says everything, with words and amounts planted in each field that a later reader may not see.
import { createCanvas } from '@napi-rs/canvas';
import type { CarRecord } from '../../src/record/record.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import type { Photos } from '../../src/views/photos.ts';
import { recordOf } from '../rollup/records.ts';

/** Stands in every private text. */
export const PLANTED = 'Zwischenlager';
/** Stands in every private amount, as whole units and as printed. */
export const AMOUNTS = ['7171', '7,171', '8282', '8,282', '9393', '9,393'];

const TEXTS = {
  'car.md': `---
name: Aldermere Fourteen
built: "1934"
style: Drophead coupe
bodied-by: Tarrowby
numbers: { chassis: 14/1187, body: No. 218 }
owner: { name: ${PLANTED} owner, contact: ${PLANTED} by letter }
opened: 2025-02-03
closed: 2026-05-29
units: inch
currency: USD
agreed:
  - { on: 2025-02-03, amount: 7171, note: ${PLANTED} agreed }
ask-above: 8282
aim: To be driven.
---

It stood in a barn, *dry*, with a wet corner. See [the register](https://example.org/14).

- two fenders
- [x] one hood iron

| kept | where |
| --- | --- |
| irons | loft |
`,
  'shop.md': `---
shop: Harrow Bend Coachworks
town: Harrow Bend
people:
  - { id: tobias, name: Tobias Reeve, initials: T.R., contact: ${PLANTED} bench }
  - { id: ines, name: Ines Marlow, initials: I.M. }
rates:
  - { from: 2025-01-01, rate: 71.71 }
pay:
  - { from: 2025-01-01, rate: 82.82 }
handling:
  - { from: 2025-01-01, kind: bought, share: 17.17% }
materials:
  - { from: 2025-01-01, per-hour: 9.39, cap: 9393 }
tax:
  - { name: ${PLANTED} tax, rate: 7%, side: charged, on: [bought], from: 2025-01-01, by: line }
vendors:
  - { id: millrace, name: Millrace Metals, town: Lower Millrace, contact: ${PLANTED} yard }
  - { id: selwick, name: Selwick Radiators, contact: ${PLANTED} drawing }
---

${PLANTED} is what the shop's own page says.
`,
  'parts/cowl.md': `---
name: Cowl
group: Body panels
side: left
found: { on: 2025-02-10, condition: damaged, note: both lower corners gone }
fabric: original
planned:
  - { line: strip, do: Strip it to steel, work: metal, hours: [717, 828, 939], hazards: [lead] }
  - { line: paint, do: Paint it in two coats, work: paint, hours: 4, spend: 7171, outside: 8282 }
---

Where lead lies now is in the entry of March 3.
`,
  'parts/radiator.md': `---
name: Radiator
group: Mechanical
found: { on: 2025-02-11, condition: worn }
fabric: unknown
---
`,
  'choices/corners.md': `---
question: New corners, or patches?
part: cowl
asked: 2025-03-01
options:
  - option: new
    name: New corners in steel
    way: new-made
    lines:
      - { do: Shape two corners, work: metal, hours: [5, 8, 14], spend: 7171 }
      - { buy: Sheet steel, price: 8282, freight: 9393, tax: 7%, from: millrace }
    keeps: 60%
    mark: NB 2025, stamped inside
    for: square edges
    against: less old metal
  - { option: patches, way: repair, lines: [{ do: Patch them, work: metal, hours: 3 }] }
decided: { option: new, on: 2025-03-05, by: "the owner, by letter", reason: The old metal is too thin. }
---

Both were tried in card.
`,
  'choices/paint.md': `---
question: Cellulose, or enamel?
part: cowl
asked: 2025-03-10
options:
  - { option: cellulose, way: other, lines: [{ do: Spray it, work: paint, hours: 3 }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: paint, hours: 5 }] }
---
`,
  'log/2025-03-03.md': `---
by: tobias
hours:
  - { part: cowl, line: strip, work: metal, time: 3h 30m, note: paint off the top }
  - { part: cowl, line: strip, work: metal, time: 1h, note: lead scraped, no-charge: "${PLANTED} no charge" }
  - { work: shop, time: 1, by: ines, note: bench cleared }
bought:
  - { what: Soft iron wire, from: millrace, part: cowl, price: 7171, count: 7, tax: 93.93, freight: 82.82, discount: 71.71, deposit: 93.93, bill: "${PLANTED} bill", paid-by: owner }
outside:
  - { what: Recore the radiator, from: selwick, part: radiator, price: 8282, tax: 71.71, bill: "${PLANTED} 12" }
ordered:
  - { what: Top cloth, from: millrace, price: 9393, bill: "${PLANTED} 13", expected: 2025-09-01 }
finished: [cowl/strip]
marks:
  - { mark: CW 1, what: Bolts, part: cowl, as: refit, count: 4, from-where: lower flange, kept: bag 12 }
finishes:
  - { part: cowl, what: lead, product: body solder 30/70, where: "left side, below the waist" }
tested:
  - { what: "Radiator, 4 psi", part: radiator, since: 2025-03-01, until: 2025-03-03, result: holds, note: no bubbles }
sought:
  - { what: Second hood iron, asked: [three breakers], outcome: not found }
measured:
  - { kind: thickness, part: cowl, state: before, of: lip, readings: [0.048 in, 0.047 in], target: 0.060 in, within: 0.003 in }
pads:
  - { mount: L1, stack: [1/8 in, 1/16 in], state: before }
photos:
  - { file: IMG_1.jpg, part: cowl, shows: before, caption: The cowl as it came., alt: A rusty cowl with lead on its left side., pair: side }
shop-only: ${PLANTED} only
---

Stripped the cowl to bright steel.
`,
  'log/2025-04-07.md': `---
hours:
  - { part: cowl, line: paint, work: paint, time: 2h, by: ines, choice: corners }
fabric:
  - { part: cowl, now: original, note: "two corners new, NB 2025" }
received:
  - { what: Top cloth, from: millrace, price: 9393, bill: "${PLANTED} 14" }
returned:
  - { what: Soft iron wire, from: millrace, price: 7171, deposit: 93.93, bill: "${PLANTED} 15" }
measured:
  - { kind: thickness, part: cowl, state: after, of: lip, readings: [0.046 in, 0.048 in], target: 0.060 in, within: 0.003 in }
left:
  - { line: cowl/paint, hours: [717, 828, 939], spend: 7171 }
agreed:
  - { what: "${PLANTED} word", amount: 8282, how: "${PLANTED} by telephone" }
paid:
  - { amount: 9393, how: "${PLANTED} transfer" }
photos:
  - { file: IMG_2.jpg, part: cowl, shows: after, caption: The same side in green., alt: A smooth green cowl., pair: side }
---

First coat.
`,
};

/** The record, its sums, and what its two pictures are called. */
export function planted(changed: Record<string, string> = {}) {
  const record: CarRecord = recordOf({ ...TEXTS, ...changed });
  const photo = (name: string, width: number, height: number) => ({
    file: `pictures/${name}-large.webp`,
    width,
    height,
    small: { file: `pictures/${name}-small.webp`, width: 480, height: 360 },
  });
  const photos: Photos = new Map([
    ['photos/2025-03-03/IMG_1.jpg', photo('one', 800, 600)],
    ['photos/2025-04-07/IMG_2.jpg', photo('two', 600, 800)],
  ]);
  return { record, rollup: rollUp(record), photos };
}

/** Small JPEGs by the names of the record's pictures. */
export function pictures(): Map<string, Buffer> {
  const jpeg = (width: number, height: number) => {
    const canvas = createCanvas(width, height);
    const pen = canvas.getContext('2d');
    pen.fillStyle = '#7f9887';
    pen.fillRect(0, 0, width, height);
    return canvas.toBuffer('image/jpeg');
  };
  return new Map([
    ['pictures/one-large.webp', jpeg(80, 60)],
    ['pictures/two-large.webp', jpeg(60, 80)],
  ]);
}
