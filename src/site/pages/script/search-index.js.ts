// The index of the search, written beside the scripts.
import { searched, searchScript } from '../../../views/search.ts';
import { site } from '../../record.ts';
import { mayStand } from '../../stands.ts';

export const shows = mayStand(async () => {
  const { record, ...whole } = await site();
  return { found: record && 'photos' in whole ? searched(record, whole.photos) : undefined };
});

export async function GET(page: { params: object; props: object; locals: object }): Promise<Response> {
  const { found } = (await shows.at(page)) ?? {};
  const text = found ? searchScript(found) : '';
  return new Response(text, { headers: { 'content-type': 'text/javascript' } });
}
