// How long form and pads take beside a plain least-squares fit in the same run: made up from a seed, the same every time.
import { leastSquares } from '../../measure/least-squares.ts';
import { narrowestLayer } from '../../measure/narrowest-layer.ts';
import { type PadsAsked, proposePads } from '../../measure/pads/pads.ts';
import { type Draw, drawFrom } from './life-size/draw.ts';
import type { Row } from './row.ts';

/** Each stage on the same made-up frames, one after another, some rounds unmeasured first. */
export function measureRows(seed = 1934, frames = 21, warm = 5): Row[] {
  const draw = drawFrom(seed);
  const sheets = Array.from({ length: frames + warm }, () =>
    Array.from({ length: 200 }, () => heightFrom(draw)),
  );
  const asked = Array.from({ length: frames + warm }, () => mountsFrom(draw));
  const times = (run: (i: number) => unknown) => {
    const each = sheets.map((_, i) => {
      const begun = performance.now();
      run(i);
      return performance.now() - begun;
    });
    const order = each.slice(warm).sort((one, other) => one - other);
    return (order[order.length >> 1] ?? Number.NaN) / 1000;
  };
  const floor = times((i) => fitOf(sheets[i] ?? []));
  const against = 'a plane of least squares through 200 points';
  const form = times((i) => narrowestLayer(sheets[i] ?? []));
  const pads = times((i) => proposePads(asked[i] as PadsAsked));
  return [
    { id: 'form', what: 'flatness of 200 points, narrowest layer', took: form, against, floor },
    { id: 'pads', what: 'pads for 16 mounts', took: pads, against, floor },
  ];
}

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
