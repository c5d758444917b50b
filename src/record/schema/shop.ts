// shop.md: people, rates, tax, vendors, handling.
import type { z } from 'zod';
import { TAXED } from '../words.ts';
import { type Fields, field, line, lines, sheet } from './fields.ts';

export const shopSheet = (f: Fields) =>
  sheet({
    shop: field(f.text(), 'The shop’s name.', 'Harrow Bend Coachworks'),
    town: field(f.text().optional(), 'Where the shop is.', 'Harrow Bend'),
    people: field(
      lines(
        line({
          id: field(f.id(), 'The short name used in the log.', 'tobias'),
          name: field(f.text(), 'The person’s name.', 'Tobias Reeve'),
          initials: field(f.text().optional(), 'Initials, for tables.', 'T.R.'),
          contact: field(
            f.text().optional(),
            'How to reach them; never leaves the shop.',
            'bench phone',
            'shop',
          ),
        }),
      ),
      'Everybody whose hours are logged.',
      '[{ id: tobias, name: Tobias Reeve }]',
    ),
    rates: field(
      hourly(f, 'owner').optional(),
      'What the owner is charged for an hour.',
      '[{ from: 2025-01-01, rate: 85 }]',
      'owner',
    ),
    pay: field(
      hourly(f, 'shop').optional(),
      'What an hour costs the shop.',
      '[{ from: 2025-01-01, rate: 34 }]',
      'shop',
    ),
    handling: field(
      lines(
        line({
          from: field(f.day(), 'The day this begins.', '2025-01-01', 'owner'),
          kind: field(f.oneOf(['bought', 'outside']), 'Which bills it is added to.', 'bought', 'owner'),
          share: field(f.share(), 'The share added.', '10%', 'owner'),
        }),
      ).optional(),
      'What is added to bills that are passed on.',
      '[{ from: 2025-01-01, kind: bought, share: 10% }]',
      'owner',
    ),
    materials: field(
      lines(
        line({
          from: field(f.day(), 'The day this begins.', '2025-01-01', 'owner'),
          'per-hour': field(f.money().optional(), 'An amount for each charged hour.', '3.50', 'owner'),
          'of-labour': field(f.share().optional(), 'Or a share of the labor.', '4%', 'owner'),
          cap: field(
            f.money().optional(),
            'The most that is charged under this rule in all.',
            '$1,800',
            'owner',
          ),
        }),
      ).optional(),
      'The shop’s consumables: rod, gas, abrasives, rags.',
      '[{ from: 2025-01-01, per-hour: 3.50 }]',
      'owner',
    ),
    tax: field(
      lines(
        line({
          name: field(f.text(), 'The tax’s name on a statement.', 'Sales tax', 'owner'),
          rate: field(f.rate(), 'Its rate.', '7%', 'owner'),
          side: field(
            f.oneOf(['paid', 'charged']),
            'Paid by the shop to a vendor, or charged by the shop to the owner.',
            'charged',
            'owner',
          ),
          on: field(lines(f.oneOf(TAXED)), 'What it is on.', '[bought, materials]', 'owner'),
          from: field(f.day(), 'The day this begins.', '2025-01-01', 'owner'),
          by: field(
            f.oneOf(['line', 'statement']),
            'Rounded on each line, or once on the statement’s sum.',
            'line',
            'owner',
          ),
          rounding: field(
            f.oneOf(['half-up', 'half-even', 'down']).optional(),
            'How it is rounded; half-up unless said.',
            'half-up',
            'owner',
          ),
          included: field(
            f.yes().optional(),
            'The prices hold this tax already: it is shown, and nothing is added.',
            'true',
            'owner',
          ),
        }),
      ).optional(),
      'Tax rules by date. Local tax law decides which are right.',
      '[{ name: Sales tax, rate: 7%, side: charged, on: [bought], from: 2025-01-01, by: line }]',
      'owner',
    ),
    step: field(
      f.time().optional(),
      'Charged time is rounded up to this step; none by default.',
      '15m',
      'owner',
    ),
    minimum: field(
      f.time().optional(),
      'The least time that a line of hours is charged at; none by default.',
      '30m',
      'owner',
    ),
    vendors: field(
      lines(
        line({
          id: field(f.id(), 'The short name used in the log.', 'millrace'),
          name: field(f.text(), 'The vendor’s name.', 'Millrace Metals'),
          town: field(f.text().optional(), 'Where they are.', 'Lower Millrace'),
          contact: field(
            f.text().optional(),
            'How to reach them; never leaves the shop.',
            'ask for the yard',
            'shop',
          ),
        }),
      ).optional(),
      'Everybody the shop buys from or sends work to.',
      '[{ id: millrace, name: Millrace Metals }]',
    ),
    pads: field(
      lines(
        line({
          thickness: field(f.thickness(), 'How thick a pad is.', '1/16 in'),
          count: field(f.whole().optional(), 'How many there are; as many as wanted unless said.', '12'),
        }),
      ).optional(),
      'The pads in stock that go under body mounts.',
      '[{ thickness: 1/16 in, count: 12 }, { thickness: 1/8 in }]',
    ),
    work: field(f.texts().optional(), 'More kinds of work than the built-in ones.', '[lettering]'),
  });

const hourly = (f: Fields, audience: 'owner' | 'shop') =>
  lines(
    line({
      from: field(f.day(), 'The day this rate begins.', '2025-01-01', audience),
      rate: field(f.money(), 'For one hour.', '85.00', audience),
      who: field(f.ref('person').optional(), 'Only for this person.', 'ines', audience),
      work: field(f.ref('work').optional(), 'Only for this kind of work.', 'timber', audience),
    }),
  );

export type ShopSheet = z.output<ReturnType<typeof shopSheet>>;
