// Where the mounts lie in plan, and how far heights over them stay from the one plane or level nearest to all.
import { narrowestLayer, threeApart } from '../narrowest-layer.ts';
import { narrowestStrip } from '../narrowest-strip.ts';

type Place = { x: number; y: number };

/**
 * `frame`: mounts whose heights settle the plane, three, two for a row of mounts, one for a level; `shares`: how much
 * of each of their heights the plane has at every mount. `offsOf` gives heights less the middle of the narrowest layer
 * that holds them, for all mounts or those named.
 */
export type Laid = {
  frame: number[];
  shares: number[][];
  offsOf: (heights: readonly number[], mounts?: readonly number[]) => number[];
};

export function layFrame(places: readonly Place[], target: 'plane' | 'level'): Laid {
  const every = places.map((_, j) => j);
  const pick = (heights: readonly number[], mounts: readonly number[]) =>
    mounts.map((j) => ({ ...(places[j] as Place), z: heights[j] as number }));
  if (target === 'level') {
    return {
      frame: [0],
      shares: places.map(() => [1]),
      offsOf: (heights, mounts = every) => aboutLevel(mounts.map((j) => heights[j] as number)),
    };
  }
  return { ...settledBy(places), offsOf: (heights, mounts = every) => aboutPlane(pick(heights, mounts)) };
}

function settledBy(places: readonly Place[]): Pick<Laid, 'frame' | 'shares'> {
  const three = threeApart(places);
  if (three) {
    const [a, b, c] = three.map((j) => places[j] as Place) as [Place, Place, Place];
    const area = cross(a, b, c);
    return {
      frame: three,
      shares: places.map((place) => [
        cross(place, b, c) / area,
        cross(a, place, c) / area,
        cross(a, b, place) / area,
      ]),
    };
  }
  const row = alongRow(places);
  const from = row.indexOf(Math.min(...row));
  const to = row.indexOf(Math.max(...row));
  const length = (row[to] as number) - (row[from] as number);
  if (length === 0) return { frame: [0], shares: places.map(() => [1]) };
  return {
    frame: [from, to],
    shares: row.map((along) => {
      const share = (along - (row[from] as number)) / length;
      return [1 - share, share];
    }),
  };
}

const cross = (a: Place, b: Place, c: Place): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

function aboutLevel(heights: readonly number[]): number[] {
  const middle = (Math.min(...heights) + Math.max(...heights)) / 2;
  return heights.map((height) => height - middle);
}

function aboutPlane(points: readonly (Place & { z: number })[]): number[] {
  const layer = narrowestLayer(points);
  if (layer.ok) {
    const { low, width, alongX, acrossY } = layer.value;
    return points.map(({ x, y, z }) => z - low - width / 2 - alongX * x - acrossY * y);
  }
  const row = alongRow(points);
  const offsets = points.map(({ z }, i) => ({ along: row[i] as number, off: z }));
  const { low, width, slope } = narrowestStrip(offsets);
  return offsets.map(({ along, off }) => off - low - width / 2 - slope * along);
}

/** Distances along the row that places in one line make. */
function alongRow(places: readonly Place[]): number[] {
  const first = places[0] as Place;
  const far = places.reduce((most, each) => (reach(first, each) > reach(first, most) ? each : most), first);
  const length = reach(first, far) || 1;
  return places.map(
    ({ x, y }) => ((x - first.x) * (far.x - first.x) + (y - first.y) * (far.y - first.y)) / length,
  );
}

const reach = (one: Place, other: Place): number => Math.hypot(one.x - other.x, one.y - other.y);
