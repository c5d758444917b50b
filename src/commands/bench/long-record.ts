// A long record for timing: made up from a seed, the same at every run, with nothing wrong in it.
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { addDays } from '../../figures/days.ts';
import type { WrittenFile } from '../../record/record.ts';

/** The texts of a record with so many days' entries, and fifty parts. */
export function longRecord(entries: number, seed: number): WrittenFile[] {
  const random = xoroshiro128plus(seed);
  const draw: Draw = (from, to) => uniformInt(random, from, to);
  return [
    { file: 'car.md', text: CAR },
    { file: 'shop.md', text: SHOP },
    ...Array.from({ length: PARTS }, (_, i) => part(i, draw)),
    ...Array.from({ length: entries }, (_, i) => entry(i, draw)),
  ];
}

type Draw = (from: number, to: number) => number;

const PARTS = 50;
const FIRST = '2021-01-04';

const CAR = `---
name: Aldermere Fourteen
built: "1934"
opened: ${FIRST}
units: inch
currency: USD
agreed:
  - { on: ${FIRST}, amount: 900000 }
---

The record that the timing is made with.
`;

const SHOP = `---
shop: Harrow Bend Coachworks
people:
  - { id: tobias, name: Tobias Reeve, initials: T.R. }
  - { id: ines, name: Ines Marlow, initials: I.M. }
rates:
  - { from: 2021-01-01, rate: 75.00 }
  - { from: 2022-01-01, rate: 78.00 }
pay:
  - { from: 2021-01-01, rate: 34.00 }
handling:
  - { from: 2021-01-01, kind: bought, share: 10% }
materials:
  - { from: 2021-01-01, per-hour: 3.50 }
tax:
  - { name: Sales tax, rate: 7%, side: charged, on: [bought, materials], from: 2021-01-01, by: line }
  - { name: Use tax, rate: 7%, side: paid, on: [bought], from: 2021-01-01, by: line }
step: 15m
vendors:
  - { id: millrace, name: Millrace Metals }
  - { id: penhale, name: Penhale Timber Yard }
  - { id: keld, name: Keld Fasteners }
---
`;

function part(i: number, draw: Draw): WrittenFile {
  const hours = draw(2, 12);
  return {
    file: `parts/part-${i}.md`,
    text: `---
name: Part ${i}
group: Group ${i % 8}
found: { on: ${FIRST}, condition: worn, note: as it came in }
planned:
  - { line: strip, do: Strip it, work: metal, hours: [${hours}, ${hours + 3}, ${hours + 9}], hazards: [lead] }
  - { line: mend, do: Mend it, work: metal, hours: [4, 6, 11], spend: [20, 40, 90], after: [strip] }
---

${prose(30, draw)}
`,
  };
}

function entry(i: number, draw: Draw): WrittenFile {
  const name = () => `part-${draw(0, PARTS - 1)}`;
  const many = (from: number, to: number, line: () => string) =>
    Array.from({ length: draw(from, to) }, line).join('');
  const bought = many(
    0,
    3,
    () =>
      `  - what: ${GOODS[draw(0, GOODS.length - 1)]}\n    from: ${['millrace', 'penhale', 'keld'][draw(0, 2)]}\n    part: ${name()}\n    line: mend\n    price: ${draw(2, 120)}.${draw(10, 99)}\n    count: ${draw(1, 8)}\n    bill: "${2000 + i}"\n`,
  );
  const measured = many(
    0,
    1,
    () =>
      `  - { kind: thickness, part: ${name()}, state: before, readings: [0.047 in, 0.0${draw(36, 48)} in, 0.044 in], target: 18 ga steel, within: 0.003 in }\n`,
  );
  return {
    file: `log/${addDays(FIRST, i)}.md`,
    text: `---
hours:
${many(
  1,
  4,
  () =>
    `  - part: ${name()}\n    line: ${draw(0, 1) ? 'strip' : 'mend'}\n    work: metal\n    by: ${draw(0, 1) ? 'tobias' : 'ines'}\n    time: ${draw(1, 2)}h ${draw(0, 3) * 15}m\n    note: ${prose(6, draw).toLowerCase().replace(/\W+$/, '')}\n`,
)}${bought && `bought:\n${bought}`}${measured && `measured:\n${measured}`}---

${many(1, 3, () => `${prose(draw(25, 70), draw)}\n\n`)}${draw(0, 9) ? '' : TABLE}`,
  };
}

const GOODS = ['Steel sheet 18 ga', 'Carriage bolts', 'White ash board', 'Soft iron wire', 'Primer quart'];
const WORDS =
  'the left sill came up dry and true at the third mount after two passes with a plane while old lead along the lower edge was scraped cold and bagged so that a new strip could be tacked in place and checked against its pattern'.split(
    ' ',
  );
const TABLE =
  '| mount | before | after |\n| --- | ---: | ---: |\n| L1 | 1/8 in | 1/16 in |\n| R1 | 3/16 in | 1/16 in |\n';

/** So many words, as sentences of about twelve. */
function prose(count: number, draw: Draw): string {
  const words = Array.from({ length: count }, (_, i) => {
    const word = WORDS[draw(0, WORDS.length - 1)] ?? '';
    const plain = word.replaceAll('*', '');
    return i % 12 === 0
      ? `${plain.charAt(0).toUpperCase()}${plain.slice(1)}`
      : i % 12 === 11
        ? `${plain}.`
        : plain;
  });
  return `${words.join(' ').replace(/\.?$/, '.')}`;
}
