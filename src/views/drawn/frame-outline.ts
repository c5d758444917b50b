// The frame from above: two rails drawn in toward the front, and its cross members. Front to the left.
import { line, outline, type Point, type Shape } from './shapes.ts';

/**
 * Where a place of the frame lies on the drawing: `along` is 0 at the front end of the bay of mounts and 1 at its rear
 * end, `across` 0 at the left rail’s middle and 1 at the right one’s.
 */
export type Place = (along: number, across: number) => Point;

/** How far the frame reaches beyond the bay, as shares of its length. Proportions of our own drawing of the car. */
export const FRONT = 0.56;
export const REAR = 0.14;

export function frameOutline(place: Place, look: string): Shape[] {
  return [0, 1].map((side) =>
    outline(
      look,
      rail(side).map(([along, across]) => place(along, across)),
    ),
  );
}

export function crossMembers(place: Place): Shape[] {
  return [-0.49, 0, 0.386, 0.784, REAR - 0.03 + 1].flatMap((along) =>
    [0, THICK * 0.35].map((more) => {
      const inside = drawnIn(along) + THICK / 2;
      return line('thin', place(along + more, inside), place(along + more, 1 - inside));
    }),
  );
}

/** The middle of the car, a little longer than the frame. */
export function middle(place: Place): Shape {
  return line('centre', place(-FRONT - 0.03, 0.5), place(1 + REAR + 0.03, 0.5));
}

/** A rail’s flanges are this share of the bay’s width apart. */
const THICK = 0.056;
const STEPS = 12;

/** How far toward the middle a rail’s middle lies: nothing along the bay, then in an easy curve to its horn. */
function drawnIn(along: number): number {
  const share = Math.max(0, Math.min(1, -along / 0.364));
  return 0.14 * share * share * (3 - 2 * share);
}

function rail(side: number): Point[] {
  const from = -FRONT;
  const curve = Array.from({ length: STEPS + 1 }, (_, i) => -0.364 + (0.364 * i) / STEPS);
  const stations = [from, ...curve, 1 + REAR];
  const edge = (off: number): Point[] =>
    stations.map((along) => {
      const across = drawnIn(along) + off;
      return [along, side === 0 ? across : 1 - across] as const;
    });
  return [...edge(-THICK / 2), ...edge(THICK / 2).toReversed()];
}
