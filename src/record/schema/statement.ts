// statements/<number>.md: an account as the owner got it. It is written by a command and kept as it is.
import { z } from 'zod';
import { type Fields, field, line, lines, sheet } from './fields.ts';

/** What a line of an account can be: hours, a line of a vendor’s bill, a price fixed beforehand, money from the owner. */
export const STATED = ['hours', 'bill', 'price', 'paid'] as const;

/** A number needs a digit, so that it can’t be mistaken for a word of the site. */
const NUMBER = /^(?=.*\d)[a-z0-9]+(?:-[a-z0-9]+)*$/;

export const statementSheet = (f: Fields) => {
  const amount = (says: string, example: string) => field(f.signed().optional(), says, example, 'owner');
  const sum = (says: string, example: string) => field(f.signed(), says, example, 'owner');
  const day = (says: string, example: string) => field(f.day(), says, example, 'owner');
  const text = (says: string, example: string) => field(f.text().optional(), says, example, 'owner');
  const stated = {
    day: day('The day it stands under.', '2025-03-03'),
    entry: field(f.text(), 'The entry of the log that it stands in.', '2025-03-03-b', 'owner'),
    kind: field(f.oneOf(STATED), 'What it is.', 'hours', 'owner'),
    what: field(f.text(), 'What was done, bought or paid.', 'tack and weld the new strip', 'owner'),
    part: text('The part it is for.', 'rear-fender-left'),
    work: text('The kind of work.', 'metal'),
    by: text('Who worked.', 'ines'),
    time: field(f.time().optional(), 'Time worked.', '4h 10m', 'owner'),
    charged: field(f.time().optional(), 'Time charged.', '4h 15m', 'owner'),
    rate: amount('What an hour was charged at.', '75.00'),
    'no-charge': text('Why it isn’t charged.', 'our own mistake, done again'),
    'in-price': field(f.yes().optional(), 'Its price was fixed beforehand.', 'true', 'owner'),
    from: text('The vendor.', 'millrace'),
    bill: text('The number on the bill.', '"20817"'),
    'paid-by-owner': field(f.yes().optional(), 'The owner paid the vendor.', 'true', 'owner'),
    exempt: field(f.yes().optional(), 'No tax is charged on it.', 'true', 'owner'),
    labour: amount('Labor.', '318.75'),
    materials: amount('Shop materials that went with it.', '14.88'),
    goods: amount('The vendor’s price, before freight and tax.', '14.70'),
    freight: amount('Freight.', '1.85'),
    'paid-tax': amount('Tax that the vendor charged.', '1.03'),
    handling: amount('Handling.', '1.76'),
    deposit: amount('A deposit; below zero when it came back.', '60.00'),
    paid: amount('Money from the owner.', '8,000.00'),
    taxes: field(
      lines(
        line({
          tax: field(f.text(), 'Its letter among the taxes.', 'A', 'owner'),
          basis: sum('What it is on.', '17.49'),
          amount: amount('What it comes to, where it is rounded on each line.', '1.22'),
        }),
      ).optional(),
      'The taxes that it is under.',
      '[{ tax: A, basis: 17.49, amount: 1.22 }]',
      'owner',
    ),
  };
  const one = '{ day: 2025-03-03, entry: 2025-03-03, kind: hours, what: tack the strip, labour: 262.50 }';
  return sheet({
    number: field(
      z.string({ error: 'a number' }).regex(NUMBER, { error: 'a number such as `003` or `2025-03`' }),
      'Its number; the file is named by it.',
      '"003"',
      'owner',
    ),
    from: day('The first day of its period.', '2025-03-01'),
    to: day('The last day of its period.', '2025-03-31'),
    issued: day('The day it was issued.', '2025-04-02'),
    'brought-forward': sum('The balance of the one before.', '1,204.50'),
    lines: field(lines(line(stated)).optional(), 'Its lines.', `[${one}]`, 'owner'),
    corrections: field(
      lines(
        line({
          was: field(sheet(stated).optional(), 'The line as it was stated.', one, 'owner'),
          now: field(sheet(stated).optional(), 'The line as it reads now.', one, 'owner'),
        }),
      ).optional(),
      'Lines of earlier statements that have changed since.',
      `[{ was: ${one} }]`,
      'owner',
    ),
    taxes: field(
      lines(
        line({
          tax: field(f.text(), 'Its letter.', 'A', 'owner'),
          name: field(f.text(), 'Its name.', 'Sales tax', 'owner'),
          rate: field(f.rate(), 'Its rate.', '7%', 'owner'),
          by: field(f.oneOf(['line', 'statement'] as const), 'Where it was rounded.', 'line', 'owner'),
          rounding: field(
            f.oneOf(['half-up', 'half-even', 'down'] as const),
            'How it was rounded.',
            'half-up',
            'owner',
          ),
          within: field(
            f.rate().optional(),
            'Only where the prices hold it already: the rate of all taxes that they hold.',
            '20%',
            'owner',
          ),
          basis: sum('What it is on.', '412.30'),
          amount: sum('What it comes to.', '28.86'),
        }),
      ).optional(),
      'Its taxes.',
      '[{ tax: A, name: Sales tax, rate: 7%, by: line, rounding: half-up, basis: 412.30, amount: 28.86 }]',
      'owner',
    ),
    sums: field(
      sheet({
        labour: sum('Labor.', '3,412.50'),
        bills: sum('Bills with their handling.', '412.30'),
        materials: sum('Shop materials.', '159.25'),
        deposits: sum('Deposits out, less those that came back.', '60.00'),
        corrections: sum('What the corrections come to.', '-12.10'),
        tax: sum('Tax added.', '28.86'),
        paid: sum('Money from the owner.', '8,000.00'),
      }),
      'What its parts come to.',
      '{ labour: 3412.50, bills: 412.30, materials: 159.25, deposits: 0, corrections: 0, tax: 28.86, paid: 8000 }',
      'owner',
    ),
    balance: sum('What was due; below zero when the owner was ahead.', '-2,795.59'),
    digest: field(
      z.string({ error: 'a digest' }).regex(/^[0-9a-f]{64}$/, {
        error: 'the digest as the command wrote it, 64 digits and letters from a to f',
      }),
      'The SHA-256 digest of all that stands in it, by which a change by hand is noticed.',
      'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
      'owner',
    ),
  });
};

export type StatementSheet = z.output<ReturnType<typeof statementSheet>>;
