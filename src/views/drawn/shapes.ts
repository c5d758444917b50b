// What drawings of measurements are made of: lines, dots, boxes and words, in units of the drawing.

export type Point = readonly [x: number, y: number];

/** `look` names how it is drawn: what was is dashed, what is stands in ink. */
export type Shape =
  | { is: 'line'; look: string; points: readonly Point[]; closed?: true }
  | { is: 'dot'; look: string; at: Point; r: number }
  | { is: 'box'; look: string; at: Point; width: number; height: number }
  | { is: 'text'; look: string; at: Point; anchor: 'start' | 'middle' | 'end'; text: string };

/**
 * A drawing. `scale` is how many units a millimeter takes, `factor` how many times larger than that the deviations are
 * drawn; left out where nothing says how long the thing is, so that no scale can be named.
 */
export type Drawn = { width: number; height: number; shapes: Shape[]; scale: number; factor?: number };

/** Widths of the two drawings of everything: for a desk and for a phone. */
export const DESK = 760;
export const PHONE = 340;

export const line = (look: string, ...points: Point[]): Shape => ({ is: 'line', look, points });
export const outline = (look: string, points: readonly Point[]): Shape => ({
  is: 'line',
  look,
  points,
  closed: true,
});
export const dot = (look: string, at: Point, r = 3): Shape => ({ is: 'dot', look, at, r });
export const box = (look: string, at: Point, width: number, height: number): Shape => ({
  is: 'box',
  look,
  at,
  width,
  height,
});
export const words = (
  look: string,
  at: Point,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
): Shape => ({ is: 'text', look, at, anchor, text });

/** The largest round factor at which a deviation takes no more than a share of the size that it is drawn beside. */
export function factorFor(deviation: number, size: number, share: number): number {
  const most = deviation > 0 ? (share * size) / deviation : 1;
  return FACTORS.findLast((factor) => factor <= most * (1 + 1e-9)) ?? 1;
}

const FACTORS = [1, 2, 3, 4, 5, 8, 10, 15, 20, 25, 30, 40, 50, 80, 100, 150, 200, 300, 400, 500, 800, 1000];

/** States in the drawing itself how much larger something is drawn: `slope × 10`, below it at the right. */
export function stating(what: string, drawn: Drawn): Drawn {
  const { width, height, factor } = drawn;
  if (factor === undefined || factor === 1) return drawn;
  const text = words('q', [width, height + 12], `${what} × ${factor}`, 'end');
  return { ...drawn, height: height + 16, shapes: [...drawn.shapes, text] };
}
