// parts/<part>.md: a part of the car, how it was found, the work planned on it.
import type { z } from 'zod';
import { CONDITION, FABRIC, HAZARD, SIDE } from '../words.ts';
import { type Fields, field, line, lines, sheet } from './fields.ts';

export const partSheet = (f: Fields) =>
  sheet({
    name: field(f.text(), 'The part’s name.', 'Left rear fender'),
    group: field(f.text(), 'The group it is listed under.', 'Fenders and boards'),
    side: field(f.oneOf(SIDE).optional(), 'The side of the car, seen from the driver’s seat.', 'left'),
    at: field(f.id().optional(), 'Its place on the drawing.', 'rear-fender-left'),
    found: field(
      sheet({
        on: field(f.day(), 'The day it was looked at.', '2025-02-04'),
        condition: field(f.oneOf(CONDITION), 'One word for its state.', 'damaged'),
        note: field(f.text().optional(), 'What was seen.', 'lower lip rusted through'),
      }).optional(),
      'How it was found.',
      '{ on: 2025-02-04, condition: damaged }',
    ),
    fabric: field(f.oneOf(FABRIC).optional(), 'What it was made of as found.', 'original'),
    'fabric-now': field(
      f.oneOf(FABRIC).optional(),
      'What it is now, where choices and log don’t say.',
      'original',
    ),
    planned: field(
      lines(line({ line: field(f.id(), 'A short name for the line.', 'lower-edge'), ...work(f) })).optional(),
      'The work planned.',
      '[{ line: lower-edge, do: Weld in a new lower edge, work: metal, hours: [8, 12, 20] }]',
    ),
  });

/** What a planned line and a work line of an option have in common. */
const work = (f: Fields) => ({
  do: field(f.text(), 'What is to be done.', 'Cut out the lower edge, weld in new'),
  work: field(f.ref('work'), 'The kind of work.', 'metal'),
  ...estimate(f),
  'fixed-price': field(
    f.money().optional(),
    'A price fixed beforehand: charged once, on the day it is finished, in place of its hours; bills stay as they are.',
    '480.00',
    'owner',
  ),
  after: field(
    f.refs('line').optional(),
    'Lines that must be finished first.',
    '[strip, frame/level-brackets]',
  ),
});

/** What work is expected to take. */
export const estimate = (f: Fields) => ({
  hours: field(
    f.hoursRange().optional(),
    'Hours expected: one figure, or low, likely, high.',
    '[8, 12, 20]',
    'owner',
  ),
  spend: field(f.moneyRange().optional(), 'Bought things expected.', '[40, 60, 110]', 'owner'),
  outside: field(f.moneyRange().optional(), 'Work outside the shop expected.', '[300, 380, 600]', 'owner'),
  hazards: field(
    lines(f.oneOf(HAZARD)).optional(),
    'What can hurt: a caution is shown wherever the line is. `[]` when nothing can.',
    '[lead, hot-work]',
  ),
});

export type PartSheet = z.output<ReturnType<typeof partSheet>>;
