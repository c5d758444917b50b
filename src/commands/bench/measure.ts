// How long form and pads take beside a plain least-squares fit in the same run: made up from a seed, the same every time.
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { leastSquares } from '../../measure/least-squares.ts';
import { narrowestLayer } from '../../measure/narrowest-layer.ts';
import { type PadsAsked, proposePads } from '../../measure/pads/pads.ts';

/** The middle time of a stage and its slowest, in milliseconds, and the middle against that of the fit. */
type MeasureRow = { stage: string; ms: number; slowest: number; ratio: number };

/** Each stage on the same made-up frames, one after another, some rounds unmeasured first. */
export function timeMeasures(seed: number, frames = 21, warm = 5): MeasureRow[] {
  const random = xoroshiro128plus(seed);
  const draw = (from: number, to: number): number => uniformInt(random, from, to);
  const sheets = Array.from({ length: frames + warm }, () =>
    Array.from({ length: 200 }, () => heightFrom(draw)),
  );
  const asked = Array.from({ length: frames + warm }, () => mountsFrom(draw));
  const stages: [string, (i: number) => unknown][] = [
    ['200 points least squares', (i) => fitOf(sheets[i] ?? [])],
    ['200 points minimum zone', (i) => narrowestLayer(sheets[i] ?? [])],
    ['16-mount pads search', (i) => proposePads(asked[i] as PadsAsked)],
  ];
  const timed = stages.map(([stage, run]) => {
    const times = sheets.map((_, i) => {
      const begun = performance.now();
      run(i);
      return performance.now() - begun;
    });
    const order = times.slice(warm).sort((one, other) => one - other);
    return { stage, ms: order[order.length >> 1] ?? Number.NaN, slowest: order.at(-1) ?? Number.NaN };
  });
  const fit = timed[0]?.ms ?? Number.NaN;
  const two = (value: number) => Math.round(value * 100) / 100;
  return timed.map(({ stage, ms, slowest }) => ({
    stage,
    ms: two(ms),
    slowest: two(slowest),
    ratio: two(ms / fit),
  }));
}

type Draw = (from: number, to: number) => number;
type Height = { x: number; y: number; z: number };

/** A place on a panel of 2 by 1 m, its height within 3 mm. */
function heightFrom(draw: Draw): Height {
  return { x: draw(0, 2000), y: draw(0, 1000), z: draw(-300, 300) / 100 };
}

function fitOf(heights: readonly Height[]): unknown {
  return leastSquares(
    heights.map(({ x, y }) => [1, x, y]),
    heights.map(({ z }) => z),
  );
}

/** Sixteen mounts in two rows, up to 2.5 mm off, stacks of one to three pads, half of the stock running out. */
function mountsFrom(draw: Draw): PadsAsked {
  const sizes = [0.4, 0.8, 1.6, 3.2];
  return {
    mounts: Array.from({ length: 16 }, (_, i) => ({
      id: `${i < 8 ? 'L' : 'R'}${(i % 8) + 1}`,
      x: (i % 8) * 350,
      y: i < 8 ? 0 : 1040,
      z: draw(-250, 250) / 100,
      stack: Array.from({ length: draw(1, 3) }, () => sizes[draw(0, 3)] ?? 1.6),
    })),
    stock: sizes.map((thickness, t) => (t < 2 ? { thickness, count: 6 } : { thickness })),
    tolerance: 0.8,
    target: 'plane',
  };
}
