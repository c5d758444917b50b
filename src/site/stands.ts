// A page that would come out as it lies in the last site isn't drawn again. Pages that may stand lay all that they show
// before a component of `shown/`, which knows nothing else of the record but its frame.
import { comparedBy, type Shown } from '../views/shown/compared.ts';
import { frame, lastSite } from './record.ts';

/**
 * The answer that the page at `path` stands, if it was drawn before from the same, as a server gives it for a page that
 * its reader has. Nothing is compared where nothing is kept.
 */
export async function stands(path: string, shown: Shown): Promise<Response | undefined> {
  const last = lastSite();
  const text = last && comparedBy(await frame(), shown);
  return text !== undefined && last?.has(path, text)
    ? new Response(null, { status: last.stands })
    : undefined;
}
