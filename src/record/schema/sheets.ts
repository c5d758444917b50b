// The schema of each kind of file, for whoever asks what may be written rather than what it comes to: neither currency
// nor units change that.
import type { z } from 'zod';
import { carSheet } from './car.ts';
import { choiceSheet } from './choice.ts';
import { entrySheet } from './entry.ts';
import { inRecord } from './fields.ts';
import { partSheet } from './part.ts';
import { shopSheet } from './shop.ts';
import { statementSheet } from './statement.ts';

const f = inRecord({ code: 'USD', digits: 2, sign: '$' }, 'inch');

/** By kind of file, in the order of the writer’s guide. */
export const sheets = {
  car: carSheet(f),
  shop: shopSheet(f),
  part: partSheet(f),
  choice: choiceSheet(f),
  entry: entrySheet(f),
  statement: statementSheet(f),
} satisfies Record<string, z.ZodType>;
