// The kinds of measurement. A reading stands as it was taken; what follows from it is worked out elsewhere.
import { z } from 'zod';
import { STATE } from '../words.ts';
import { type Fields, field, line, lines } from './fields.ts';

export const measuredLine = (f: Fields) => {
  const kind = <K extends string>(name: K) => ({
    kind: field(z.literal(name), 'The kind of measurement.', name),
    part: field(f.ref('part'), 'The part measured.', 'frame'),
    state: field(f.oneOf(STATE), 'Before the work, at a trial, or after it.', 'before'),
    by: field(f.ref('person').optional(), 'Who read it, where the day’s person did not.', 'ines'),
    with: field(f.text().optional(), 'What it was read with.', 'digital level, 3 1/2 in base'),
    note: field(f.text().optional(), 'What a later reader must know.', 'rail set to zero first'),
  });
  /** Said of every kind in the same words, since the guide lists once what all kinds have. */
  const plusMinus = <S extends z.ZodType>(schema: S, example: string) => ({
    'plus-minus': field(
      schema,
      'How far the reading may be off, either way: an angle for a level, a share for moisture, else a length.',
      example,
    ),
  });
  const lengthOff = plusMinus(f.length().optional(), '1/64 in');
  const of = (example: string) => ({
    of: field(f.text().optional(), 'What of the part was measured, where it has more than one.', example),
  });
  const passes = {
    target: field(f.length().optional(), 'What it should be.', '3/16 in'),
    within: field(f.length().optional(), 'How far off is still right.', '1/32 in'),
  };
  return z.discriminatedUnion(
    'kind',
    [
      line({
        ...kind('level'),
        at: field(f.text().optional(), 'The mount or place.', 'L3'),
        reading: field(f.angle(), 'What the level said.', '1.4°'),
        target: field(f.angle().optional(), 'What it should be; level unless said.', '0°'),
        within: field(f.angle().optional(), 'How far off is still right.', '0.5°'),
        over: field(f.length().optional(), 'The length it was read over.', '3 1/2 in'),
        ...plusMinus(f.angle().optional(), '0.1°'),
      }),
      line({
        ...kind('diagonals'),
        ...of('main bay'),
        a: field(f.length(), 'One side.', '88 in'),
        b: field(f.length(), 'The side next to it.', '41 in'),
        a2: field(f.length().optional(), 'The side opposite the first.', '88 in'),
        b2: field(f.length().optional(), 'The side opposite the second.', '41 in'),
        d1: field(f.length(), 'One diagonal.', '97 1/4 in'),
        d2: field(f.length(), 'The other diagonal.', '96 15/16 in'),
        corners: field(
          lines(f.text()).length(4, { error: 'four corners' }).optional(),
          'Names of the corners, from where the first side begins.',
          '[L1, L5, R5, R1]',
        ),
        within: field(f.length().optional(), 'How far apart the diagonals may be.', '1/8 in'),
        ...lengthOff,
      }),
      line({
        ...kind('heights'),
        ...of('bracket tops'),
        points: field(
          lines(
            line({
              mount: field(f.text().optional(), 'The mount it was read at.', 'L1'),
              x: field(f.length().optional(), 'Distance from the front.', '0 in'),
              y: field(f.length().optional(), 'Distance from the left.', '0 in'),
              z: field(f.length(), 'The height.', '-3/64 in'),
            }),
          ).optional(),
          'Heights, each with its place.',
          '[{ mount: L1, x: 0 in, y: 0 in, z: 0 in }]',
        ),
        corners: field(
          lines(f.length()).length(4, { error: 'four corners' }).optional(),
          'Or four corners, going round.',
          '[0 in, 1/16 in, 0 in, 0 in]',
        ),
        within: field(f.length().optional(), 'How far off is still right.', '1/32 in'),
        ...lengthOff,
      }),
      line({
        ...kind('straight'),
        ...of('left rail'),
        length: field(f.length(), 'The length looked along.', '57 in'),
        offsets: field(
          lines(f.length()).min(2, { error: 'two offsets or more' }),
          'Offsets from a line, evenly along it.',
          '[0 in, 1/32 in, 0 in]',
        ),
        within: field(f.length().optional(), 'How far off is still right.', '1/16 in'),
        ...lengthOff,
      }),
      line({
        ...kind('gaps'),
        where: field(f.text(), 'Which gap.', 'rear edge'),
        readings: field(
          lines(f.length()).min(1, { error: 'one reading or more' }),
          'Readings along it.',
          '[3/16 in, 3/16 in, 7/32 in]',
        ),
        length: field(f.length().optional(), 'The length that they go along, evenly.', '24 in'),
        ...passes,
        ...lengthOff,
      }),
      line({
        ...kind('timber'),
        ...of('back end'),
        species: field(f.text(), 'The timber.', 'white ash'),
        width: field(f.length(), 'Width of the piece.', '5 in'),
        grain: field(f.oneOf(['radial', 'tangential'] as const), 'The grain across the width.', 'tangential'),
        'moisture-from': field(f.share(), 'Moisture now.', '12%'),
        'moisture-to': field(f.share(), 'Moisture it will come to.', '8%'),
        ...plusMinus(f.share().optional(), '1%'),
      }),
      line({
        ...kind('thickness'),
        ...of('above the lip'),
        readings: field(
          lines(f.thickness()).min(1, { error: 'one reading or more' }),
          'Readings.',
          '[0.046 in, 0.049 in]',
        ),
        target: field(f.thickness().optional(), 'What it should be.', '18 ga steel'),
        within: field(f.length().optional(), 'How far off is still right.', '0.003 in'),
        ...lengthOff,
      }),
      line({
        ...kind('length'),
        of: field(f.text().optional(), 'What was measured.', 'wheelbase, left'),
        readings: field(lines(f.length()).min(1, { error: 'one reading or more' }), 'Readings.', '[112 in]'),
        ...passes,
        ...lengthOff,
      }),
    ],
    {
      error: 'a kind of measurement: level, diagonals, heights, straight, gaps, timber, thickness or length',
    },
  );
};
