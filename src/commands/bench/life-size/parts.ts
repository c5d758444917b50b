// The parts of a made-up record, with the work planned on each.
import type { WrittenFile } from '../../../record/record.ts';
import { beginningOf, dayOf, type Line, windows } from './calendar.ts';
import { type Draw, oneOf, rangeText } from './draw.ts';
import { prose } from './words.ts';

export type Part = { id: string; name: string; lines: Line[] };

/** So many parts, named by their thing and place; a fifth of their lines wait for a line of another part too. */
export function partsOf(parts: number, entries: number, draw: Draw): Part[] {
  const made: Part[] = [];
  for (let i = 0; i < parts; i++) {
    const name = nameOf(i);
    const id = name.toLowerCase().replaceAll(' ', '-');
    const kinds = KINDS.slice(0, draw(2, KINDS.length));
    const times = windows(beginningOf(i, parts, entries), kinds.length, entries, draw);
    const lines = kinds.map(({ line, work }, k): Line => {
      const { from, to } = times[k] as { from: number; to: number };
      const before = kinds[k - 1];
      return { part: id, line, work, from, to, after: before ? [before.line] : [] };
    });
    const other = made.length > 0 ? oneOf(made, draw).lines.at(-1) : undefined;
    for (const line of lines) {
      if (other && other.to < line.from && draw(1, 5) === 1) line.after.push(`${other.part}/${other.line}`);
    }
    made.push({ id, name, lines });
  }
  return made;
}

/** The files of the parts. */
export function partFiles(parts: readonly Part[], entries: number, draw: Draw): WrittenFile[] {
  return parts.map(({ id, name, lines }, i) => ({
    file: `parts/${id}.md`,
    text: `---
name: ${name}
group: ${GROUPS[i % GROUPS.length]}
${i < PLACES.length ? `at: ${PLACES[i]}\n` : ''}found:
  on: ${dayOf(0, entries)}
  condition: ${oneOf(['sound', 'worn', 'damaged', 'incomplete'], draw)}
  note: ${oneOf(FOUND, draw)}
fabric: ${oneOf(['original', 'original', 'original', 'earlier-repair', 'unknown'], draw)}
planned:
${lines.map((line) => planned(line, draw)).join('')}---

${prose(3, name, draw)}
`,
  }));
}

function planned({ line, work, after }: Line, draw: Draw): string {
  const { say, hazards } = KINDS.find((kind) => kind.line === line) as (typeof KINDS)[number];
  return `  - line: ${line}
    do: ${say}
    work: ${work}
    hours: ${rangeText(draw(2, 9), 6, draw)}
${draw(1, 3) === 1 ? `    spend: ${rangeText(draw(20, 90), 80, draw)}\n` : ''}${after.length > 0 ? `    after: [${after.join(', ')}]\n` : ''}${hazards ? `    hazards: [${hazards}]\n` : ''}`;
}

function nameOf(i: number): string {
  const thing = THINGS[i % THINGS.length] as string;
  return `${WHERE[Math.floor(i / THINGS.length) % WHERE.length]} ${thing}${i < THINGS.length * WHERE.length ? '' : ` ${Math.floor(i / (THINGS.length * WHERE.length)) + 1}`}`;
}

const KINDS: readonly { line: string; say: string; work: string; hazards?: string }[] = [
  { line: 'survey', say: 'Look it over and write down what is found', work: 'research' },
  { line: 'take-down', say: 'Take it down and tag what comes off', work: 'assembly' },
  { line: 'mend', say: 'Weld in what is gone and planish', work: 'metal', hazards: 'hot-work' },
  { line: 'fit', say: 'Fit it dry and set the gaps', work: 'assembly' },
  { line: 'finish', say: 'Finish it by brush and rub it down', work: 'paint' },
];
const WHERE = ['Left front', 'Right front', 'Left rear', 'Right rear', 'Middle'];
const THINGS = [
  'fender',
  'door',
  'quarter',
  'sill',
  'hinge post',
  'latch post',
  'bearer',
  'floor board',
  'running board',
  'apron',
  'bracket',
  'spring',
  'hanger',
  'lamp',
  'bow',
  'cover strip',
  'stay',
  'rail',
  'lock',
  'handle',
  'hinge set',
  'window channel',
  'glass',
  'weather strip',
  'trim panel',
  'carpet',
  'seat rail',
  'arm rest',
  'pillar',
  'cross tube',
  'axle stub',
  'brake drum',
  'backing plate',
  'cable',
  'pipe',
  'hose',
  'loom',
  'junction box',
  'step',
  'kick plate',
  'vent',
  'drain',
  'mount',
  'pad seat',
  'outrigger',
  'shackle',
  'damper',
  'wheel',
  'hub',
  'cap',
] as const;
const GROUPS = [
  'Body panels',
  'Body timber',
  'Fenders and boards',
  'Frame',
  'Mechanical',
  'Electrical',
  'Trim and top',
  'Doors',
];
const PLACES = [
  'front-fender-left',
  'door-left',
  'rear-quarter-left',
  'sill-left',
  'cowl',
  'hood',
  'radiator',
  'frame',
  'running-board-left',
  'deck-lid',
  'wheels',
  'windshield',
];
const FOUND = [
  'rust through from behind along the foot, the rest sound',
  'paint gone, dents on the outer face, all fixings there',
  'repaired once before with rivets and a plate',
  'loose at the lower end, dry and hard above',
  'complete, stiff, full of old grease',
];
