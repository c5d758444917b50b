// Writes what was shown at the desk, and nothing else: whole, and never over what somebody else wrote since.
import { join } from 'node:path';
import { replaceText } from '../disk/replace-text.ts';
import type { Form, Looked } from './browser/told.ts';
import { liesWithin } from './entry-of.ts';
import { looked } from './looked.ts';
import type { RecordAt } from './lying.ts';

/** What was written; or what stands in the way, as it is then shown. */
export type Written = { said: string } | { refused: string; looked?: Looked };

/** `sign` is the sign of what was shown. */
export async function written(at: RecordAt, form: Form, sign: string): Promise<Written> {
  const { told, plans } = await looked(at, form);
  if (told.conflict)
    return {
      refused: `${told.conflict.file} was changed by somebody else in the meantime, so nothing was written.`,
      looked: told,
    };
  if (told.errors > 0) return { refused: 'Something is wrong yet, so nothing was written.', looked: told };
  if (plans.length === 0) return { refused: 'There is nothing to write.', looked: told };
  if (told.sign !== sign)
    return { refused: 'This isn’t what was shown, so nothing was written. Look at it again.', looked: told };
  const done: string[] = [];
  // A choice first: an entry that tells of a decision never stands without it.
  for (const { file, before, text } of plans.toReversed()) {
    if (!(await liesWithin(at.root, file)))
      return { refused: `${file} would lie outside the record, so it isn’t written.` };
    if ((await replaceText(join(at.root, file), before, text)) === 'changed') {
      const { told: again } = await looked(at, form);
      const so = done.length > 0 ? ` ${done.join(' ')}` : '';
      return {
        refused: `${file} was changed by somebody else in the meantime, so it wasn’t written.${so}`,
        looked: again,
      };
    }
    done.push(before === undefined ? `Written: ${file}, which is new.` : `Written: ${file}.`);
  }
  return { said: [...done, ...told.sums.slice(1, 2)].join(' ') };
}
