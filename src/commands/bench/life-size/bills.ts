// What is bought in a made-up record: bills with tax and deposits, work outside, things ordered, received, sent back.
import type { Line } from './calendar.ts';
import { type Draw, oneOf } from './draw.ts';
import { VENDORS } from './shop.ts';

/** The lines that an entry gets under each of these names. */
export type Bought = Record<'bought' | 'outside' | 'ordered' | 'received' | 'returned', string[]>;

/** So many lines of bills for each entry; `lineOf` says what an entry works on, `choiceOf` which choice it follows from. */
export function billsOf(
  counts: readonly number[],
  lineOf: (entry: number) => Line | undefined,
  choiceOf: (entry: number, part: string) => string | undefined,
  draw: Draw,
): Bought[] {
  const all = counts.map(
    (): Bought => ({ bought: [], outside: [], ordered: [], received: [], returned: [] }),
  );
  const at = (entry: number) => all[entry];
  let number = 2000;
  for (const [entry, count] of counts.entries()) {
    const vendor = oneOf(VENDORS, draw);
    number += 1;
    for (let i = 0; i < count; i++) {
      const line = lineOf(entry);
      const part = line ? `    part: ${line.part}\n    line: ${line.line}\n` : '';
      const choice = line && choiceOf(entry, line.part);
      const tail = `${part}${choice ? `    choice: ${choice}\n` : ''}    bill: "${number}"\n`;
      const what = `${oneOf(GOODS, draw)}, lot ${number}-${i + 1}`;
      if (draw(1, 9) === 1) {
        at(entry)?.outside.push(
          `  - what: ${oneOf(OUTSIDE, draw)}, job ${number}-${i + 1}\n    from: ${vendor}\n    price: ${draw(40, 380)}.00\n${tail}`,
        );
        continue;
      }
      const [cents, many] = [draw(190, 12_900), draw(1, 6)];
      const deposit = draw(1, 25) === 1 ? 60 : 0;
      at(entry)?.bought.push(
        `  - what: "${what}"\n    from: ${vendor}\n    price: ${money(cents)}\n${many > 1 ? `    count: ${many}\n` : ''}    tax: ${money(Math.round(cents * many * 0.07))}\n${deposit ? `    deposit: ${deposit}.00\n` : ''}${tail}`,
      );
      if (deposit) {
        // Deposits come back within five weeks of entries, so long as there are some.
        at(Math.min(entry + draw(4, 20), counts.length - 1))?.returned.push(
          `  - { what: "${what}", from: ${vendor}, deposit: ${deposit}.00, bill: "${number}" }\n`,
        );
      }
      if (many === 1 && entry > 30) {
        at(entry - draw(5, 30))?.ordered.push(
          `  - { what: "${what}", from: ${vendor}${line ? `, part: ${line.part}` : ''}, price: ${money(cents)} }\n`,
        );
        at(entry)?.received.push(`  - { what: "${what}", from: ${vendor}, bill: "${number}" }\n`);
      }
    }
  }
  return all;
}

const money = (cents: number) => (cents / 100).toFixed(2);

const GOODS = [
  'Steel sheet',
  'Carriage bolts',
  'White ash board',
  'Soft iron wire',
  'Primer',
  'Welting',
  'Copper tacks',
  'Brass screws',
];
const OUTSIDE = ['Plate the fittings', 'Grind the seat flat', 'Cut to the drawing', 'Carry there and back'];
