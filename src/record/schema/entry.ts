// log/<date>.md: a day in the shop.
import type { z } from 'zod';
import { FABRIC, SHOWS, STATE } from '../words.ts';
import { type Fields, field, line, lines, sheet } from './fields.ts';
import { measuredLine } from './measured.ts';

export const entrySheet = (f: Fields) => {
  const part = field(
    f.ref('part').optional(),
    'The part it is for; none means the car as a whole.',
    'rear-fender-left',
  );
  const choice = field(f.ref('choice').optional(), 'The choice it follows from.', 'rear-fender-left');
  const planned = field(f.ref('line').optional(), 'The planned line it is for.', 'lower-edge');
  const vendor = field(f.ref('vendor'), 'The vendor.', 'millrace');
  const paidBy = field(
    f.oneOf(['shop', 'owner']).optional(),
    'Who paid the vendor; the shop unless said.',
    'owner',
    'owner',
  );
  const exempt = field(f.yes().optional(), 'No tax is charged to the owner on it.', 'true', 'owner');
  const goods = { what: field(f.text(), 'What it is.', 'Soft iron wire, 1/8 in'), from: vendor, part };
  const bill = field(f.text().optional(), 'The number on the bill.', '20817', 'owner');
  const order = {
    ...goods,
    price: field(f.money().optional(), 'The price named.', '1450', 'owner'),
    bill,
    choice,
  };
  const waiting = field(f.ref('line').optional(), 'The planned line that waits for it.', 'lower-edge');
  const expected = field(f.day().optional(), 'The day it should come.', '2025-08-15');
  return sheet({
    by: field(f.ref('person').optional(), 'The day’s person, if the lines don’t say.', 'tobias'),
    hours: field(
      lines(
        line({
          part,
          work: field(f.ref('work'), 'The kind of work.', 'metal'),
          time: field(f.time(), 'Time worked.', '4h 15m'),
          line: planned,
          by: field(f.ref('person').optional(), 'Who worked.', 'ines'),
          note: field(f.text().optional(), 'What was done.', 'tack and weld the new strip'),
          'no-charge': field(
            f.text().optional(),
            'Why it isn’t charged.',
            'our own mistake, done again',
            'owner',
          ),
          exempt,
          choice,
        }),
      ).optional(),
      'Hours worked.',
      '[{ part: rear-fender-left, work: metal, time: 4h 15m }]',
    ),
    bought: field(
      lines(
        line({
          ...goods,
          line: planned,
          price: field(f.money(), 'The price of one.', '4.90', 'owner'),
          count: field(f.count().optional(), 'How many; one unless said.', '3'),
          freight: field(f.money().optional(), 'What bringing it cost.', '18.50', 'owner'),
          tax: field(f.money().optional(), 'Tax as billed.', '4.26', 'owner'),
          discount: field(f.money().optional(), 'What was taken off.', '5.00', 'owner'),
          deposit: field(
            f.money().optional(),
            'A deposit that comes back, for an old part in exchange.',
            '60.00',
            'owner',
          ),
          bill,
          exempt,
          choice,
          'paid-by': paidBy,
        }),
      ).optional(),
      'Things bought, each a line of a bill.',
      '[{ what: Soft iron wire, from: millrace, part: rear-fender-left, price: 4.90, count: 3 }]',
    ),
    outside: field(
      lines(
        line({
          ...goods,
          line: planned,
          price: field(f.money(), 'The price of the work.', '640', 'owner'),
          tax: field(f.money().optional(), 'Tax as billed.', '44.80', 'owner'),
          bill,
          exempt,
          choice,
          'paid-by': paidBy,
        }),
      ).optional(),
      'Work done outside the shop.',
      '[{ what: Recore the radiator, from: cole-radiators, part: radiator, price: 640 }]',
    ),
    ordered: field(
      lines(line({ ...order, line: waiting, expected })).optional(),
      'Things ordered: open until they are received.',
      '[{ what: Top cloth, from: webb-trim, expected: 2025-12-01 }]',
    ),
    received: field(
      lines(line(order)).optional(),
      'Orders that came.',
      '[{ what: Top cloth, from: webb-trim }]',
    ),
    returned: field(
      lines(
        line({
          ...goods,
          price: field(f.money().optional(), 'What the vendor gives back for the goods.', '38.00', 'owner'),
          tax: field(f.money().optional(), 'Tax that comes back.', '2.66', 'owner'),
          deposit: field(f.money().optional(), 'A deposit that came back.', '60.00', 'owner'),
          bill,
          choice,
        }),
      ).optional(),
      'Things sent back, and deposits returned.',
      '[{ what: Water pump, from: dunmore, deposit: 60.00, bill: 3312 }]',
    ),
    measured: field(
      lines(measuredLine(f)).optional(),
      'Readings taken.',
      '[{ kind: level, part: frame, state: before, at: L3, reading: 1.4° }]',
    ),
    pads: field(
      lines(
        line({
          mount: field(f.text(), 'The mount, by side and number from the front.', 'L3'),
          stack: field(lines(f.thickness()), 'The pads in it, from the bottom.', '[1/8 in, 1/16 in]'),
          state: field(f.oneOf(STATE), 'As found, at a trial, or as left.', 'before'),
          part,
        }),
      ).optional(),
      'The pads under the body mounts.',
      '[{ mount: L3, stack: [1/8 in], state: before }]',
    ),
    marks: field(
      lines(
        line({
          mark: field(f.text(), 'The words on the tag.', 'SILL L 4'),
          what: field(f.text(), 'What came off.', 'Carriage bolts, 5/16 in'),
          part,
          'from-where': field(f.text().optional(), 'Where it came from.', 'left sill, fourth hole'),
          count: field(f.whole().optional(), 'How many.', '4'),
          kept: field(f.text().optional(), 'The bag or shelf.', 'bag 12'),
          as: field(f.oneOf(['refit', 'pattern', 'spare', 'scrap']), 'What it is kept as.', 'refit'),
          photo: field(f.photo().optional(), 'Its picture.', 'IMG_1034.jpg'),
        }),
      ).optional(),
      'Tags put on what came off.',
      '[{ mark: SILL L 4, what: Carriage bolts, as: refit }]',
    ),
    sought: field(
      lines(
        line({
          what: field(f.text(), 'What was looked for.', 'Second hood iron'),
          part,
          asked: field(f.texts().optional(), 'Where it was asked for.', 'three breakers'),
          outcome: field(f.text().optional(), 'What came of it.', 'not found'),
        }),
      ).optional(),
      'Parts hunted for, found or not.',
      '[{ what: Second hood iron, outcome: not found }]',
    ),
    finishes: field(
      lines(
        line({
          part: field(f.ref('part'), 'The part.', 'cowl'),
          what: field(f.text(), 'Lead, filler, primer, paint, wax.', 'lead'),
          product: field(f.text().optional(), 'The product by its kind.', 'Body solder 30/70'),
          colour: field(f.text().optional(), 'The color.', 'coach green'),
          mix: field(f.text().optional(), 'How it was mixed.', '4:1:1'),
          coats: field(f.whole().optional(), 'How many coats.', '3'),
          where: field(f.text().optional(), 'Where it lies.', 'left side, below the waist'),
        }),
      ).optional(),
      'What a later owner must know to touch it up, and where lead lies.',
      '[{ part: cowl, what: lead, where: left side }]',
    ),
    tested: field(
      lines(
        line({
          what: field(f.text(), 'What was tested.', 'Fuel tank, filled'),
          part,
          since: field(f.day().optional(), 'From which day.', '2025-09-01'),
          until: field(f.day().optional(), 'To which day.', '2025-09-15'),
          result: field(f.text(), 'What came of it.', 'holds'),
          by: field(f.ref('person').optional(), 'Who tested it, where the day’s person did not.', 'ines'),
          note: field(f.text().optional(), 'More about it.', 'no smell at the union'),
        }),
      ).optional(),
      'Tests made.',
      '[{ what: "Fuel tank, filled", result: holds }]',
    ),
    photos: field(
      lines(
        line({
          file: field(
            f.photo(),
            'The picture: its name in the day’s folder, or its path under photos/.',
            'IMG_1028.jpg',
          ),
          caption: field(
            f.text().optional(),
            'What it shows and why it was taken.',
            'Lower lip, before the lead came off.',
          ),
          alt: field(
            f.text().optional(),
            'The picture in words, for who can’t see it.',
            'A rusty fender edge with ragged holes.',
          ),
          part,
          shows: field(f.oneOf(SHOWS).optional(), 'Before, during or after the work.', 'before'),
          pair: field(f.text().optional(), 'A name that joins a before and an after.', 'cowl-side'),
        }),
      ).optional(),
      'Pictures of the day.',
      '[{ file: IMG_1028.jpg, part: rear-fender-left, shows: before }]',
    ),
    finished: field(
      f.refs('line').optional(),
      'Planned lines done that day.',
      '[rear-fender-left/lower-edge]',
    ),
    left: field(
      lines(
        line({
          line: field(f.ref('line'), 'The planned line.', 'rear-fender-left/dents'),
          hours: field(f.hoursRange().optional(), 'What is now thought to be left.', '[1, 3, 7]', 'owner'),
          spend: field(f.moneyRange().optional(), 'What is still to be bought.', '[0, 20, 60]', 'owner'),
        }),
      ).optional(),
      'What is now thought to be left of a line.',
      '[{ line: rear-fender-left/dents, hours: [1, 3, 7] }]',
    ),
    fabric: field(
      lines(
        line({
          part: field(f.ref('part'), 'The part.', 'main-sill-right'),
          now: field(f.oneOf(FABRIC), 'What it is now.', 'new-made'),
          note: field(f.text().optional(), 'How much of it.', 'front 30 in new'),
        }),
      ).optional(),
      'What a part is now made of.',
      '[{ part: main-sill-right, now: new-made }]',
    ),
    agreed: field(
      lines(
        line({
          what: field(f.text(), 'What the owner agreed to.', 'Recore the radiator', 'owner'),
          amount: field(f.money().optional(), 'Up to how much.', '900', 'owner'),
          how: field(f.text(), 'How the word was given.', 'by telephone', 'owner'),
          choice,
        }),
      ).optional(),
      'The owner’s word.',
      '[{ what: Recore the radiator, amount: 900, how: by telephone }]',
      'owner',
    ),
    paid: field(
      lines(
        line({
          amount: field(f.money(), 'What the owner paid.', '8000', 'owner'),
          how: field(f.text(), 'How.', 'bank transfer', 'owner'),
        }),
      ).optional(),
      'Money from the owner.',
      '[{ amount: 8000, how: bank transfer }]',
      'owner',
    ),
    'shop-only': field(
      f.texts().optional(),
      'Words that never leave the shop.',
      'quote the top higher next time',
      'shop',
    ),
  });
};

export type EntrySheet = z.output<ReturnType<typeof entrySheet>>;
