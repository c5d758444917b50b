// The sections of a part's page of measurements: a drawing where one can be made, and the tables behind it.
import { once, onceEach } from '../../record/once.ts';
import type { CarRecord } from '../../record/record.ts';
import { type GapPair, gapPairs } from '../../rollup/measured/sides.ts';
import {
  type Kind,
  type MeasuredOf,
  measurementsOf,
  type Thing,
  thingsByPart,
} from '../../rollup/measured.ts';
import { datedText } from '../dated.ts';
import { atMount } from '../drawn/levels.ts';
import { namesOf } from '../names.ts';
import { type Compare, compareTable } from './compare.ts';
import { figureText } from './figure-text.ts';
import { levelTable } from './level-table.ts';
import {
  gapsPicture,
  heightsPicture,
  levelsPicture,
  nameText,
  openingPicture,
  type Picture,
  straightPicture,
} from './pictures.ts';
import type { Plain } from './plain-table.ts';
import { pointTable } from './point-table.ts';

/** `days` are those of its readings; `id` its place on the page. */
export type Section = {
  id: string;
  title: string;
  days: string[];
  picture?: Picture;
  compares: Compare[];
  plains: Plain[];
  says: string[];
};

/** Worked out once: the list of parts that are drawn asks, and the page of each. */
export const sectionsOf = onceEach((part: string, record: CarRecord): Section[] => {
  const { things } = measurementsOf(record);
  const own = thingsByPart(record).get(part) ?? [];
  const levels = own.filter((thing): thing is LevelThing => thing.kind === 'level');
  const [brackets, places] = [levels.filter(atMount), levels.filter((thing) => !atMount(thing))];
  const pairs = pairsOf(things);
  const told = new Set<GapPair>();
  const others = own.flatMap((thing): Omit<Section, 'id'>[] => {
    if (thing.kind === 'level') return [];
    if (thing.kind !== 'gaps') return [sectionOf(thing, record)];
    const pair = pairs.find(({ left, right }) => left === thing || right === thing);
    if (!pair) return [gapSection([thing as GapThing], undefined, record)];
    if (told.has(pair)) return [];
    told.add(pair);
    return [gapSection([pair.left, pair.right], pair, record)];
  });
  return [
    ...others.filter(({ picture }) => picture),
    ...levelSections(brackets, 'Level: the brackets of the mounts', record),
    ...levelSections(places, 'Level', record),
    ...others.filter(({ picture }) => !picture),
  ].map((section, i) => ({ ...section, id: `m-${i + 1}` }));
});

/** Once for all parts. */
const pairsOf = once(gapPairs);

type LevelThing = Thing<MeasuredOf<'level'>>;
type GapThing = Thing<MeasuredOf<'gaps'>>;

const TITLE: { [kind in Kind]: string } = {
  level: 'Level',
  diagonals: 'Square',
  heights: 'Heights',
  straight: 'Straight',
  gaps: 'Gap',
  timber: 'Movement of the timber',
  thickness: 'Thickness',
  length: 'Length',
};

const titleOf = ({ kind, name }: Thing): string => (name === '' ? TITLE[kind] : `${TITLE[kind]}: ${name}`);

const daysOf = (things: readonly Thing[]): string[] => [
  ...new Set(things.flatMap(({ readings }) => readings.map(({ day }) => datedText(day)))),
];

function pictureOf(thing: Thing, record: CarRecord): Picture | undefined {
  if (thing.kind === 'diagonals') return openingPicture(thing as Thing<MeasuredOf<'diagonals'>>, record);
  if (thing.kind === 'straight') return straightPicture(thing as Thing<MeasuredOf<'straight'>>, record);
  if (thing.kind === 'heights') return heightsPicture(thing as Thing<MeasuredOf<'heights'>>, record);
  return undefined;
}

function sectionOf(thing: Thing, record: CarRecord): Omit<Section, 'id'> {
  const picture = pictureOf(thing, record);
  const plains = thing.kind === 'heights' ? [pointTable(thing as Thing<MeasuredOf<'heights'>>, record)] : [];
  return {
    title: titleOf(thing),
    days: daysOf([thing]),
    ...(picture && { picture }),
    compares: [compareTable(thing, nameText(thing, TITLE[thing.kind]), record.units)],
    plains,
    says: [],
  };
}

function gapSection(things: GapThing[], pair: GapPair | undefined, record: CarRecord): Omit<Section, 'id'> {
  const picture = gapsPicture(things, record);
  const names = namesOf(record);
  const [first] = things;
  return {
    title: things.length > 1 ? `Gap, left and right: ${first?.name ?? ''}` : titleOf(first as Thing),
    days: daysOf(things),
    ...(picture && { picture }),
    compares: things.map((thing) =>
      compareTable(thing, `${names.part(thing.part)}: ${thing.name}`, record.units),
    ),
    plains: [],
    says: pair ? [sidesText(pair, record)] : [],
  };
}

/** `Left against right: the left is narrower by 1/64 in (0.4 mm) in the mean …`. */
function sidesText({ sides }: GapPair, { units }: CarRecord): string {
  if (!sides.ok) return sides.why;
  const { mean, taper, widest } = sides.value;
  const even = Math.abs(mean.value) < 1e-6;
  const size = (figure: typeof mean) => figureText({ ...figure, value: Math.abs(figure.value) }, units);
  const than = even
    ? 'both are as wide in the mean'
    : `the left is ${mean.value < 0 ? 'narrower' : 'wider'} by ${size(mean)} in the mean`;
  return [
    `Left against right, as last read: ${than}`,
    ...(widest ? [`they differ by ${size(widest)} at most in one place`] : []),
    ...(taper ? [`and by ${size(taper)} in taper`] : []),
  ]
    .join(', ')
    .concat('.');
}

function levelSections(things: LevelThing[], title: string, record: CarRecord): Omit<Section, 'id'>[] {
  const picture = levelsPicture(things, record);
  if (!picture) return [];
  return [
    {
      title,
      days: daysOf(things),
      picture,
      compares: [],
      plains: [levelTable(things, record.units)],
      says: [],
    },
  ];
}
