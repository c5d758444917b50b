// Finds heights that don’t give three places or four corners.
import type { Check } from './check.ts';

export const heightsNeedPoints: Check = {
  rule: 'heights-need-points',
  severity: 'error',
  why: 'A plane is laid through three points or more, each of which says where it is.',
  run: ({ entries }) =>
    entries.flatMap(({ measured = [], placeAt }) =>
      measured.flatMap((reading, i) => {
        if (reading.kind !== 'heights') return [];
        const { points, corners } = reading;
        const fault = points
          ? corners
            ? BOTH
            : points.length < 3
              ? FEW
              : undefined
          : corners
            ? undefined
            : NONE;
        const here = fault ? [{ place: placeAt(['measured', i]), ...fault }] : [];
        const nowhere = (points ?? []).flatMap(({ x, y, mount }, j) =>
          (x && y) || (mount !== undefined && !x && !y)
            ? []
            : [
                {
                  place: placeAt(['measured', i, 'points', j]),
                  reason: 'This height doesn’t say where it was read.',
                  mend: 'Write `x` and `y`, or the `mount`.',
                },
              ],
        );
        return [...here, ...nowhere];
      }),
    ),
};

const BOTH = {
  reason: 'These heights give points and corners as well.',
  mend: 'Keep one of the two.',
};
const FEW = {
  reason: 'These heights give fewer than three points, and a plane needs three.',
  mend: 'Read a third place.',
};
const NONE = {
  reason: 'These heights give neither points nor corners.',
  mend: 'Write `points: [{ mount: L1, x: 0 in, y: 0 in, z: 0 in }, …]`, or four `corners`.',
};
