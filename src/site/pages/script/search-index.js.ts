// The index of the search, written beside the scripts.
import { searched, searchScript } from '../../../views/search.ts';
import { site } from '../../record.ts';
import { stands } from '../../stands.ts';

export async function GET(): Promise<Response> {
  const { record, ...whole } = await site();
  const found = record && 'photos' in whole ? searched(record, whole.photos) : undefined;
  const stood = await stands('script/search-index.js', { found });
  if (stood) return stood;
  const text = found ? searchScript(found) : '';
  return new Response(text, { headers: { 'content-type': 'text/javascript' } });
}
