// Prints a statement for the owner, from the same words and figures as its page.
import { forAudience } from '../record/audience.ts';
import type { CarRecord } from '../record/record.ts';
import type { Issued, Statement } from '../rollup/issued.ts';
import { statementPage } from '../views/statement.ts';
import type { Asked } from '../views/statement-asked.ts';
import { type Press, type Printed, typeset } from './typeset.ts';

/** Which statement of a record is meant. */
export type Find = (record: CarRecord) => Asked<Statement | Issued>;

/** The statement in print, or why there is none. What the owner may not see is gone before it is looked for. */
export async function printStatement(
  whole: CarRecord,
  find: Find,
  press: Omit<Press, 'units'>,
): Promise<{ printed: Printed; refused?: never } | { refused: string; printed?: never }> {
  const record = forAudience(whole, 'owner');
  const { statement, refused } = find(record);
  if (!statement) return { refused };
  const data = { ...statementPage(statement, record), built: record.car.built };
  return { printed: await typeset('statement', data, new Map(), { ...press, units: record.units }) };
}
