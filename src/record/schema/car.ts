// car.md: the car, its owner, what was agreed.
import { z } from 'zod';
import { currencyOf } from '../../figures/currency.ts';
import { type Fields, field, line, lines, readBy, sheet } from './fields.ts';

export const carSheet = (f: Fields) =>
  sheet({
    name: field(f.text(), 'The car’s name, as the record is headed.', 'Aldermere Fourteen'),
    built: field(f.text(), 'The year, or what is known of it.', '1934'),
    style: field(f.text().optional(), 'The body in a few words.', 'Drophead coupe'),
    'bodied-by': field(f.text().optional(), 'Who built the body.', 'Tarrowby'),
    numbers: field(
      z.record(z.string(), f.text()).optional(),
      'Numbers as stamped, each under its own name.',
      '{ chassis: 14/1187, body: 218 }',
    ),
    owner: field(
      sheet({
        name: field(
          f.text(),
          'The owner’s name. The history says “the owner” instead, in every text in which it stands.',
          'A. Penhallow',
          'owner',
        ).meta({ instead: 'the owner' }),
        contact: field(
          f.text().optional(),
          'How to reach the owner; never leaves the shop.',
          'by letter',
          'shop',
        ),
      }).optional(),
      'Whose car it is.',
      '{ name: A. Penhallow }',
      'owner',
    ),
    'known-owners': field(
      f.whole().optional(),
      'How many owners the car is known to have had, the present one among them.',
      '3',
    ),
    opened: field(f.day(), 'The day the record begins.', '2025-02-03'),
    closed: field(f.day().optional(), 'The day the car left.', '2026-05-29'),
    units: field(f.oneOf(['inch', 'mm']), 'The units that measurements are shown in first.', 'inch'),
    currency: field(currency(), 'The currency of every amount, by its ISO 4217 code.', 'USD'),
    agreed: field(
      lines(
        line({
          on: field(f.day(), 'The day it was agreed.', '2025-02-03', 'owner'),
          amount: field(
            f.money(),
            'What was agreed that day: the budget, or what a change added to it.',
            '$78,000',
            'owner',
          ),
          note: field(f.text().optional(), 'What it is for.', 'the whole car, without the top', 'owner'),
        }),
      ).optional(),
      'The budget and its changes; they add up.',
      '[{ on: 2025-02-03, amount: 78000 }]',
      'owner',
    ),
    'ask-above': field(
      f.money().optional(),
      'A spend above this needs the owner’s word first.',
      '$1,500',
      'owner',
    ),
    aim: field(
      f.text().optional(),
      'What the car is to be: drive, show, preserve. Shown with every choice.',
      'To be driven.',
    ),
  });

export type CarSheet = z.output<ReturnType<typeof carSheet>>;

/** Read apart and first, since every amount in the record depends on it. */
export const currency = () =>
  readBy((text) => {
    const found = currencyOf(text.trim());
    return found
      ? { ok: true, value: found }
      : { ok: false, expected: 'an ISO 4217 code in capitals, such as `USD` or `GBP`' };
  });
