// The frame from above with its mounts by number and the pads of each, seen from the side and drawn thicker.
import { byMount } from '../../rollup/measured/mounts.ts';
import type { Mounts } from '../../rollup/measured/results.ts';
import { crossMembers, FRONT, frameOutline, middle, REAR } from './frame-outline.ts';
import {
  box,
  DESK,
  type Drawn,
  dot,
  factorFor,
  line,
  type Point,
  type Shape,
  stating,
  words,
} from './shapes.ts';

/** A mount’s pads in millimeters: those that stay, those that go in, those that come out; `says` is the change in words. */
export type MountShown = {
  mount: string;
  stays: readonly number[];
  putIn: readonly number[];
  takeOut: readonly number[];
  says: string;
};

/** Mounts whose place nobody wrote down stand evenly by number. Front to the left, left side below. */
export function mountsDrawn(shown: readonly MountShown[], mounts: Mounts, width: number): Drawn | undefined {
  if (shown.length === 0) return undefined;
  const desk = width === DESK;
  const { long, wide, place } = placesOf(shown, mounts);
  const scale = (width - 16) / (long * (1 + FRONT + REAR + 0.06));
  const thickest = Math.max(
    1,
    ...shown.map(({ stays, putIn, takeOut }) => sum(stays) + Math.max(sum(putIn), sum(takeOut))),
  );
  const factor = factorFor(thickest, long, 0.09);
  const stack = thickest * scale * factor;
  const clear = desk ? 26 : 18;
  const left = 8 + long * scale * (FRONT + 0.03);
  const xs = new Map(shown.map(({ mount }) => [mount, left + place(mount) * long * scale]));
  const changes = [...rowsOfWords(shown, xs, 'L', width), ...rowsOfWords(shown, xs, 'R', width)];
  const rows = Math.max(1, ...changes.map(({ row }) => row + 1));
  const top = 29 + LINE * rows + stack + clear;
  const at = (along: number, across: number): Point => [
    left + along * long * scale,
    top + wide * scale * (1 - across),
  ];
  const half = Math.min(desk ? 30 : 15, 0.42 * closest(xs));
  const shapes = [
    middle(at),
    ...crossMembers(at),
    ...frameOutline(at, 'shape'),
    words('', at(-FRONT, 1), 'front', 'start'),
    ...shown.flatMap((each): Shape[] => {
      const right = each.mount.startsWith('R');
      const [x, rail] = at(place(each.mount), right ? 1 : 0);
      const flange = 0.028 * wide * scale;
      const out = right ? -1 : 1;
      const foot = right ? rail - flange - clear : rail + flange + clear + stack;
      const bracket = desk ? 12 : 7;
      const label = right ? foot - stack - 10 : foot + 16;
      const change = changes.find(({ mount }) => mount === each.mount);
      return [
        box('thin', [x - bracket / 2, right ? rail - flange - bracket : rail + flange], bracket, bracket),
        dot('hole', [x, rail + out * (flange + bracket / 2)], desk ? 2 : 1.4),
        ...stackDrawn(each, [x, foot], half, scale * factor),
        line('now', [x - half * 1.15, foot], [x + half * 1.15, foot]),
        words('b', [x, label], each.mount),
        ...(change ? [words('', [change.x, label + out * LINE * (change.row + 1)], each.says)] : []),
      ];
    }),
  ];
  const height = Math.ceil(top + wide * scale + clear + stack + 37 + LINE * rows);
  return stating('pads', { width, height, shapes, scale, factor });
}

/** Height of a line of words, and the width of a letter at the most in the mean. */
const LINE = 15;
const LETTER = 7;

/** What changes at the mounts of a side: words that would run into those before them stand a row further out. */
function rowsOfWords(
  shown: readonly MountShown[],
  xs: ReadonlyMap<string, number>,
  side: string,
  width: number,
): { mount: string; x: number; row: number }[] {
  const ends: number[] = [];
  return shown
    .filter(({ mount, says }) => mount.startsWith(side) && says !== '')
    .sort((one, other) => byMount(one.mount, other.mount))
    .map(({ mount, says }) => {
      const half = (says.length * LETTER) / 2;
      const x = Math.max(half, Math.min(width - half, xs.get(mount) ?? 0));
      const free = ends.findIndex((end) => end < x - half);
      const row = free < 0 ? ends.length : free;
      ends[row] = x + half + LETTER;
      return { mount, x, row };
    });
}

/** How close two mounts of a side come. */
function closest(xs: ReadonlyMap<string, number>): number {
  const gaps = ['L', 'R'].flatMap((side) => {
    const own = [...xs].flatMap(([mount, x]) => (mount.startsWith(side) ? [x] : [])).sort((a, b) => a - b);
    return own.slice(1).map((x, i) => x - (own[i] ?? 0));
  });
  return Math.min(...gaps.filter((gap) => gap > 0), Number.MAX_VALUE);
}

/** Pads that stay from the bottom up, on them what goes in; what comes out is dashed where it lay. */
function stackDrawn(
  { stays, putIn, takeOut }: MountShown,
  [x, foot]: Point,
  half: number,
  units: number,
): Shape[] {
  const pile = (look: string, pads: readonly number[], from: number): Shape[] =>
    pads.map((pad, i) => {
      const up = from + sum(pads.slice(0, i + 1)) * units;
      return box(look, [x - half, foot - up], 2 * half, pad * units);
    });
  const kept = sum(stays) * units;
  return [...pile('pad', stays, 0), ...pile('pad out', takeOut, kept), ...pile('pad in', putIn, kept)];
}

/** The bay in millimeters, and how far along it each mount stands as a share. */
function placesOf(shown: readonly MountShown[], mounts: Mounts) {
  const names = shown.map(({ mount }) => mount).sort(byMount);
  const known = names.flatMap((mount) => mounts.get(mount) ?? []);
  const [xs, ys] = [known.map(({ x }) => x), known.map(({ y }) => y)];
  const long = Math.max(...xs) - Math.min(...xs);
  const wide = Math.max(...ys) - Math.min(...ys);
  if (known.length === names.length && long > 0 && wide > 0) {
    const front = Math.min(...xs);
    return { long, wide, place: (mount: string) => ((mounts.get(mount)?.x ?? front) - front) / long };
  }
  const last = Math.max(2, ...names.map((mount) => Number(mount.slice(1))));
  // Nothing says how large the frame is: the proportions of our drawing of the car, in tenths of an inch.
  return {
    long: 880 * 2.54,
    wide: 410 * 2.54,
    place: (mount: string) => (Number(mount.slice(1)) - 1) / (last - 1),
  };
}

const sum = (pads: readonly number[]): number => pads.reduce((total, pad) => total + pad, 0);
