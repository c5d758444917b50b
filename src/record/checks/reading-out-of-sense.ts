// Finds readings that no car can give: angles, diagonals, thicknesses, gaps, moisture, minus signs.
import { inchText } from '../../figures/length-text.ts';
import { type Length, millimetres } from '../../figures/lengths.ts';
import { Exact } from '../../figures/rounding.ts';
import { shareText } from '../../figures/shares.ts';
import type { Path } from '../front-matter.ts';
import type { Entry } from '../record.ts';
import type { Check, Found } from './check.ts';

export const readingOutOfSense: Check = {
  rule: 'reading-out-of-sense',
  severity: 'error',
  why: 'A reading that no car can give is a slip of the pen, and everything worked out from it is wrong.',
  run: ({ entries }) =>
    entries.flatMap((entry) => [
      ...(entry.measured ?? []).flatMap((reading, i) => {
        const at = (...path: Path) => entry.placeAt(['measured', i, ...path]);
        return [...belowZero(reading, at), ...tooMuch(reading, at)];
      }),
      ...(entry.pads ?? []).flatMap(({ stack }, i) =>
        stack.flatMap(({ length }, j) =>
          sheet(length, () => entry.placeAt(['pads', i, 'stack', j]), 'A pad'),
        ),
      ),
    ]),
};

type Reading = NonNullable<Entry['measured']>[number];
type At = (...path: Path) => Found['place'];

const INCH = 25.4;
/** Millimetres by which a triangle must rise to be one: a billionth, only against rounding. */
const FLAT = 1e-9;

function tooMuch(reading: Reading, at: At): Found[] {
  switch (reading.kind) {
    case 'level':
      return (['reading', 'target'] as const).flatMap((key) => {
        const angle = reading[key];
        if (!angle || Math.abs(angle.degrees) <= 45) return [];
        return [
          {
            place: at(key),
            reason: `\`${angle.written}\` is steeper than 45°, which is no level reading.`,
            mend: 'Write how far it is off level, such as `1.4°`.',
          },
        ];
      });
    case 'diagonals':
      return diagonals(reading, at);
    case 'gaps':
      return reading.readings.flatMap((gap, i) =>
        millimetres(gap) > 2 * INCH
          ? [
              {
                place: at('readings', i),
                reason: `A gap of ${inchText(gap)} is wider than 2 in.`,
                mend: 'Look for a fraction that lost its lower half, such as `3 in` for `3/16 in`.',
              },
            ]
          : [],
      );
    case 'thickness':
      return reading.readings.flatMap(({ length }, i) => sheet(length, () => at('readings', i), 'A sheet'));
    case 'timber':
      return (['moisture-from', 'moisture-to'] as const)
        .filter((key) => new Exact(reading[key]).gt('0.3'))
        .map((key) => ({
          place: at(key),
          // The limit is that of the Wood Handbook, FPL-GTR-282, chapter 4, 'Shrinkage'.
          reason: `Moisture of ${shareText(reading[key])} is above fiber saturation, about 30%, where wood doesn’t shrink or swell.`,
          mend: 'Write 30% at most, or leave the movement out until the wood is drier.',
        }));
    default:
      return [];
  }
}

function sheet(length: Length, place: () => Found['place'], what: string): Found[] {
  if (millimetres(length) <= INCH) return [];
  return [
    {
      place: place(),
      reason: `${what} ${inchText(length)} thick is more than 1 in.`,
      mend: 'Look for a point that got lost, such as `48 in` for `0.048 in`.',
    },
  ];
}

/** Each diagonal closes a triangle with two sides on either side of it; which two, depends on where it begins. */
function diagonals(reading: Extract<Reading, { kind: 'diagonals' }>, at: At): Found[] {
  const { a, b, a2 = a, b2 = b } = reading;
  const [sideA, sideB, farA, farB] = [a, b, a2, b2].map(millimetres) as [number, number, number, number];
  const closes = (d: number, p: number, q: number) => d < p + q - FLAT && d > Math.abs(p - q) + FLAT;
  return (['d1', 'd2'] as const).flatMap((key) => {
    const d = millimetres(reading[key]);
    const can =
      (closes(d, sideA, sideB) && closes(d, farA, farB)) ||
      (closes(d, sideB, farA) && closes(d, farB, sideA));
    if (can) return [];
    return [
      {
        place: at(key),
        reason: `With sides of ${inchText(a)} and ${inchText(b)}, no diagonal can be ${inchText(reading[key])}.`,
        mend: 'Read the diagonal again, or mend the sides.',
      },
    ];
  });
}

/** Fields in which a length below zero has no sense. Heights and offsets may lie on either side. */
function belowZero(reading: Reading, at: At): Found[] {
  const found: Found[] = [];
  const look = (value: unknown, ...path: Path) => {
    if (Array.isArray(value)) {
      value.forEach((one, i) => {
        look(one, ...path, i);
      });
      return;
    }
    const length = (value as { length?: Length } | undefined)?.length ?? (value as Length | undefined);
    if (length?.unit === undefined || length.n >= 0) return;
    found.push({
      place: at(...path),
      reason: `\`${String(path.find((step) => typeof step === 'string'))}\` is below zero here: ${inchText(length)}.`,
      mend: 'Take the minus sign out.',
    });
  };
  for (const key of NEVER_BELOW) look((reading as Record<string, unknown>)[key], key);
  if (reading.kind !== 'level') return found;
  for (const key of ['within', 'plus-minus'] as const) {
    const angle = reading[key];
    if (!angle || angle.degrees >= 0) continue;
    found.push({
      place: at(key),
      reason: `\`${key}\` is below zero here: ${angle.written}.`,
      mend: 'Take the minus sign out.',
    });
  }
  return found;
}

const NEVER_BELOW = [
  'within',
  'plus-minus',
  'over',
  'a',
  'b',
  'a2',
  'b2',
  'd1',
  'd2',
  'length',
  'width',
  'readings',
  'target',
];
