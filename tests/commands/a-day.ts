// A full day, as flags and as a person would have written it by hand: whoever writes a day must give this file.
import { copyFile, mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { filesIn } from '../house/files.ts';
import { demoCopy } from './run.ts';

export const DAY = '2025-11-24';
export const FILE = 'log/2025-11/2025-11-24.md';

export const FLAGS = [
  ...['--day', DAY],
  ...['--by', 'tobias'],
  ...['--hours', 'carpets/make trim 2h30m; last one bound, hole cut for the lever'],
  ...['--hours', 'top-irons trim 1.5'],
  ...[
    '--bought',
    'Binding, 12 yd; from marrow-lane; part carpets; price 1.35; count 12; freight 4.50; bill 790',
  ],
  ...['--measured', 'level frame after; at L3; reading 0.2°; within 0.5°; over 3 1/2"; note read cold'],
  ...[
    '--photos',
    'IMG_2001.jpg; The last one, bound all round: no seam shows.; alt A dark carpet on a bench.; part carpets',
  ],
  ...['--photos', 'IMG_2002.jpg; Fitted.; alt A floor, covered.; part carpets; shows after'],
  ...['--finished', 'carpets/make'],
  ...['--words', 'The carpets lie flat without a nail.'],
];

export const TEXT = `---
by: tobias
hours:
  - { part: carpets, work: trim, time: 2h 30m, line: make, note: "last one bound, hole cut for the lever" }
  - { part: top-irons, work: trim, time: 1h 30m }
bought:
  - { what: "Binding, 12 yd", from: marrow-lane, part: carpets, price: 1.35, count: 12, freight: 4.50, bill: "790" }
measured:
  - { kind: level, part: frame, state: after, at: L3, reading: 0.2°, within: 0.5°, over: 3 1/2", note: read cold }
photos:
  - file: IMG_2001.jpg
    caption: "The last one, bound all round: no seam shows."
    alt: A dark carpet on a bench.
    part: carpets
  - file: IMG_2002.jpg
    caption: Fitted.
    alt: A floor, covered.
    part: carpets
    shows: after
finished: [carpets/make]
---

The carpets lie flat without a nail.
`;

/** The demo before that day: its lines are open, and its pictures lie in the day’s folder. */
export async function recordBefore(): Promise<string> {
  const folder = await demoCopy();
  const [photo = ''] = filesIn('content/photos').filter((file) => file.endsWith('.jpg'));
  await mkdir(join(folder, 'photos', DAY), { recursive: true });
  for (const name of ['IMG_2001.jpg', 'IMG_2002.jpg'])
    await copyFile(photo, join(folder, 'photos', DAY, name));
  return folder;
}
