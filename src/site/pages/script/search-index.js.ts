// The index of the search, written beside the scripts.
import { searchScript } from '../../../views/search.ts';
import { site } from '../../record.ts';

export async function GET(): Promise<Response> {
  const whole = await site();
  const text = whole.record ? searchScript(whole.record, whole.photos) : '';
  return new Response(text, { headers: { 'content-type': 'text/javascript' } });
}
