// The decisions of a made-up record: most are taken, some withdrawn, the last ones open.
import { addDays } from '../../../figures/days.ts';
import type { WrittenFile } from '../../../record/record.ts';
import { dayOf } from './calendar.ts';
import { type Draw, rangeText } from './draw.ts';
import type { Part } from './parts.ts';
import { prose } from './words.ts';

/** `since` is the first entry that may name it; an open or withdrawn one is named by none. */
export type Choice = { id: string; part: Part; since: number; state: 'open' | 'decided' | 'withdrawn' };

/** So many choices, each about a part of its own, asked when its work begins. */
export function choicesOf(choices: number, parts: readonly Part[], entries: number): Choice[] {
  return Array.from({ length: choices }, (_, i) => {
    const part = parts[Math.floor((i * parts.length) / choices)] as Part;
    const begin = part.lines[0]?.from ?? 0;
    const open = begin + DECIDED_AFTER >= entries;
    const state = open ? 'open' : i % 10 === 9 ? 'withdrawn' : 'decided';
    return { id: part.id, part, since: Math.min(begin, entries - 1) + DECIDED_AFTER, state };
  });
}

/** Entries between the question and the first line that follows from its answer: two weeks. */
const DECIDED_AFTER = 8;

/** The files of the choices. */
export function choiceFiles(choices: readonly Choice[], entries: number, draw: Draw): WrittenFile[] {
  return choices.map(({ id, part, since, state }) => {
    const asked = dayOf(since - DECIDED_AFTER, entries);
    const on = addDays(asked, 6);
    const said = {
      open: `settles: [${part.lines.at(-1)?.line}]\n`,
      decided: `decided:\n  option: repair\n  on: ${on}\n  by: the owner, standing beside it\n  reason: What is left of it carries, and the aim is to keep what can.\n`,
      withdrawn: `withdrawn:\n  on: ${on}\n  reason: On the bench it proved sound, so there was nothing to choose.\n`,
    }[state];
    return {
      file: `choices/${id}.md`,
      text: `---
question: ${part.name}, repair the original or make it new?
part: ${part.id}
asked: ${asked}
options:
  - option: repair
    name: Repair the original
    way: repair
    lines:
      - { do: "Cut out what is gone, let in new", work: metal, hours: ${rangeText(draw(4, 12), 8, draw)} }
      - { do: Fit it to its neighbors, work: assembly, hours: ${rangeText(3, 4, draw)} }
      - { buy: "Sheet, wire and bolts", price: ${rangeText(draw(40, 90), 60, draw)}, from: millrace }
    can-fail: { chance: ${draw(5, 25)}%, after: 40%, then: new-made }
    wait: ${rangeText(1, 4, draw)}
    keeps: ${draw(40, 90)}%
    for:
      - Its own holes and edges stay
      - The line is right, because the body was made to it
    against: More work than it looks
  - option: new-made
    name: Make it new
    way: new-made
    lines:
      - { do: Shape and drill it to the old centers, work: metal, hours: ${rangeText(draw(10, 20), 14, draw)} }
      - { do: Fit it to its neighbors, work: assembly, hours: ${rangeText(4, 8, draw)} }
      - { buy: Blank cut to the drawing, price: ${rangeText(draw(200, 900), 400, draw)}, freight: ${rangeText(20, 30, draw)}, tax: 7%, from: orrin }
    wait: ${rangeText(10, 30, draw)}
    keeps: 0%
    mark: NB 2025, stamped inside the flange
    for: New metal from edge to edge
    against: The old fixings go with the old part
${said}---

${prose(5, part.name, draw)}

${prose(3, part.name, draw)}
`,
    };
  });
}
