// The files of an empty record, each explaining itself in comments: what a writer begins from.
import type { Day } from '../figures/days.ts';
import type { WrittenFile } from '../record/record.ts';

/** The texts of an empty, valid record begun on a day. */
export function blankRecord(today: Day): WrittenFile[] {
  return [
    { file: 'car.md', text: car(today) },
    { file: 'shop.md', text: shop(today) },
    { file: 'parts/cowl.md', text: COWL },
    { file: `log/${today}.md`, text: ENTRY },
  ];
}

/** Folders that a record has and that begin empty. */
export const BLANK_FOLDERS = ['choices', 'photos'] as const;

const car = (today: Day) => `---
# The car. Text that holds a colon and a space, or a number sign, needs quotes.
name: Name of the car
built: "1934"
# style: Drophead coupe
# bodied-by: Who built the body
# numbers: { chassis: as stamped, engine: as stamped, body: as stamped }
# owner: { name: Name of the owner }

# The day this record begins, the units measurements are shown in first (inch or mm), the currency of every amount.
opened: ${today}
units: inch
currency: USD

# What was agreed with the owner; changes are added as lines of their own, and they add up.
# agreed:
#   - { on: ${today}, amount: 78000, note: the whole car }
# A spend above this needs the owner's word first.
# ask-above: 1500
# aim: To be driven.
---

Below the second line of dashes stands the car's story, in as many words as it needs.
`;

const shop = (today: Day) => `---
# The shop. The short names under id are what the log uses.
shop: Name of the shop
people:
  - { id: me, name: Your name }

# What an hour is charged at, and from which day. A later line changes it; who and work narrow it.
# rates:
#   - { from: ${today}, rate: 75.00 }
#   - { from: ${today}, rate: 50.00, work: research }

# Charged time is rounded up to a step, and no line of hours is charged less than the minimum.
# step: 15m
# minimum: 30m

# What is added to bills passed on, and what the shop's consumables are charged at.
# handling:
#   - { from: ${today}, kind: bought, share: 10% }
# materials:
#   - { from: ${today}, per-hour: 3.50 }

# Taxes: paid to vendors, or charged to the owner. Local tax law decides which are right.
# tax:
#   - { name: Sales tax, rate: 7%, side: charged, on: [bought], from: ${today}, by: line }

# Everybody you buy from or send work to.
# vendors:
#   - { id: sheet-yard, name: Name of the vendor, town: Where it is }
---
`;

const COWL = `---
# A part: one file each, named in lower case with hyphens. The file's name, cowl, is what the log uses.
name: Cowl
group: Body panels
# side: left
# found: { on: the day, condition: damaged, note: what was seen }
# fabric: original

# The work planned on it. Hours and money are one figure, or low, likely and high.
# planned:
#   - { line: strip, do: Strip to bright metal, work: metal, hours: [3, 4, 7] }
#   - { line: patch, do: Patch the left corner, work: metal, hours: [4, 6, 10], spend: [20, 40, 60], after: [strip], hazards: [hot-work] }
---

What a later reader must know about the part.
`;

const ENTRY = `---
# A day in the shop: one file a day, named by its date. Write only what happened; take the # away from what you use.

# Kinds of work: metal, timber, paint, trim, mechanical, electrical, assembly, research, shop.
# hours:
#   - { part: cowl, work: metal, time: 2h 30m, note: what was done }

# A line for each thing on a bill. The vendor is named by its id in shop.md.
# bought:
#   - { what: "Steel sheet, 18 ga", from: sheet-yard, part: cowl, price: 46.20, tax: 3.23, bill: "20790" }

# measured:
#   - { kind: thickness, part: cowl, state: before, readings: [0.047 in, 0.044 in], target: 18 ga steel }

# Planned lines that are done, each as part/line.
# finished: [cowl/strip]

# Words that never leave the shop.
# shop-only: quote the next one higher
---

The day in words: what was found, what was done, and why.
`;
