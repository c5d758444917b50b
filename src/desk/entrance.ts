// Who may come in: any page in a browser can reach this machine’s own addresses, so every request is checked.
import { timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** Why a request is refused: a status and a sentence. */
export type Refusal = { status: number; says: string };

/** Refuses what isn’t asked of this very address, or comes from a page that isn’t ours. */
export function strange({ headers, method }: IncomingMessage, host: string): Refusal | undefined {
  if (headers.host !== host)
    return { status: 421, says: `This is the desk at http://${host}/, and no other.` };
  const from = headers.origin;
  const asks = method === 'GET' || method === 'HEAD';
  if (from === undefined ? !asks : from !== `http://${host}`)
    return { status: 403, says: 'Only the desk’s own page may ask for this.' };
  const site = headers['sec-fetch-site'];
  // A link or an address that is typed may lead here; nothing else from another page may.
  if (
    site !== undefined &&
    site !== 'same-origin' &&
    site !== 'none' &&
    headers['sec-fetch-mode'] !== 'navigate'
  )
    return { status: 403, says: 'Only the desk’s own page may ask for this.' };
  return undefined;
}

/** True when the request carries the token as its cookie. */
export function isKnown({ headers }: IncomingMessage, cookie: string, token: string): boolean {
  const pairs = (headers.cookie ?? '').split(';').map((pair) => pair.trim());
  return pairs.some((pair) => pair.startsWith(`${cookie}=`) && isSame(pair.slice(cookie.length + 1), token));
}

/** Compares without telling by the time it takes how much of it was right. */
export function isSame(said: string, right: string): boolean {
  const [a, b] = [Buffer.from(said), Buffer.from(right)];
  return a.length === b.length && timingSafeEqual(a, b);
}

/** The cookie that lets a browser in until it is closed. */
export function letIn(cookie: string, token: string): string {
  return `${cookie}=${token}; Path=/; HttpOnly; SameSite=Strict`;
}
