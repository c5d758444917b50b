// choices/<choice>.md: a sourcing decision between two or more ways.
import type { z } from 'zod';
import { WAY } from '../words.ts';
import { type Fields, field, line, lines, sheet } from './fields.ts';
import { estimate } from './part.ts';

export const choiceSheet = (f: Fields) =>
  sheet({
    question: field(
      f.text(),
      'The question as it is put to the owner.',
      'Repair the original, or fit the reproduction?',
    ),
    part: field(f.refOrRefs('part'), 'The part or parts it is about.', 'rear-fender-left'),
    asked: field(f.day(), 'The day it was asked.', '2025-06-04'),
    'needed-by': field(f.day().optional(), 'The day the answer is needed.', '2025-06-20'),
    settles: field(
      f.refs('line').optional(),
      'Planned lines that it settles: while it is open, the forecast counts its options in their place.',
      '[rear-fender-left/lower-edge, rear-fender-left/dents]',
    ),
    options: field(
      lines(option(f)).min(2, { error: 'two options or more' }),
      'The ways open.',
      '[{ option: repair, way: repair, lines: […] }, …]',
    ),
    photos: field(
      f.refs('photo').optional(),
      'Pictures for its sheet, by their path; without them the newest of its parts stand there.',
      '[photos/2025-06-03/IMG_1080.jpg]',
    ),
    decided: field(
      sheet({
        option: field(f.id(), 'The option taken.', 'repair'),
        on: field(f.day(), 'The day of the decision.', '2025-06-11'),
        by: field(f.text(), 'Who decided.', 'the owner, by telephone'),
        reason: field(f.text(), 'Why.', 'The crown is right and the metal is sound above the lip.'),
      }).optional(),
      'What was decided, and why.',
      '{ option: repair, on: 2025-06-11, by: the owner, reason: … }',
    ),
    withdrawn: field(
      sheet({
        on: field(f.day(), 'The day it was dropped.', '2025-07-01'),
        reason: field(f.text(), 'Why the question fell away.', 'The old wheels proved sound.'),
      }).optional(),
      'Why the question was dropped.',
      '{ on: 2025-07-01, reason: … }',
    ),
  });

const option = (f: Fields) =>
  line({
    option: field(f.id(), 'A short name for the option.', 'repair'),
    name: field(f.text().optional(), 'Its heading.', 'Repair the original'),
    way: field(f.oneOf(WAY), 'Where the part would come from.', 'repair'),
    lines: field(
      lines(
        line({
          line: field(f.id().optional(), 'A short name for the line.', 'lower-edge'),
          do: field(
            f.text().optional(),
            'Work to be done; `work` and `hours` go with it.',
            'Weld in a new lower edge',
          ),
          work: field(f.ref('work').optional(), 'The kind of work.', 'metal'),
          ...estimate(f),
          buy: field(f.text().optional(), 'A thing to buy; `price` goes with it.', 'Reproduction fender'),
          price: field(f.moneyRange().optional(), 'Its price.', '1450', 'owner'),
          freight: field(f.moneyRange().optional(), 'What bringing it costs.', '[140, 180, 260]', 'owner'),
          tax: field(f.rate().optional(), 'Tax on it, where it differs from the rules.', '7%', 'owner'),
          from: field(f.ref('vendor').optional(), 'The vendor.', 'tolland-panel'),
        }),
      ).min(1, { error: 'at least one line of work or one thing to buy' }),
      'What the option would take.',
      '[{ do: Weld in a new lower edge, work: metal, hours: [12, 18, 30] }]',
    ),
    'fixed-price': field(
      f.money().optional(),
      'A price fixed beforehand for its work: charged once, when all lines that the choice settles are finished.',
      '1,450.00',
      'owner',
    ),
    'can-fail': field(
      sheet({
        chance: field(f.share(), 'The chance that it fails.', '10%'),
        after: field(f.share(), 'The share of its cost spent by then.', '40%'),
        // biome-ignore lint/suspicious/noThenProperty: the trade's word for what follows; it holds text, never a function
        then: field(f.id(), 'The option that follows.', 'reproduction'),
      }).optional(),
      'How it can fail, and what follows.',
      '{ chance: 10%, after: 40%, then: reproduction }',
    ),
    wait: field(f.dayRange().optional(), 'Days to wait for it.', '[40, 60, 110]'),
    keeps: field(f.share().optional(), 'Share of the original fabric kept.', '85%'),
    mark: field(
      f.text().optional(),
      'A permanent mark for a new part, with the year.',
      'NB 2025, stamped inside the flange',
    ),
    for: field(f.texts().optional(), 'What speaks for it.', 'keeps the wired edge'),
    against: field(f.texts().optional(), 'What speaks against it.', 'the crown is flatter'),
  });

export type ChoiceSheet = z.output<ReturnType<typeof choiceSheet>>;
