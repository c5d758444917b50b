// Asks the desk; what it can’t do comes back as a sentence.
import type { Looked } from './told.ts';

type Answer = { looked: Looked; says: string } | { said: string } | { page: string } | { says: string };

export async function send(path: string, what: unknown): Promise<Answer> {
  try {
    const answer = await fetch(path, { method: 'POST', body: JSON.stringify(what) });
    if (!/json/.test(answer.headers.get('content-type') ?? '')) return { says: (await answer.text()).trim() };
    const told = await answer.json();
    if (path === '/look') return { looked: told, says: '' };
    if (told.page) return { page: told.page };
    if (told.said) return { said: told.said };
    return told.looked ? { looked: told.looked, says: told.refused } : { says: told.refused };
  } catch {
    return { says: 'The desk can’t be reached. What you filled in is still here; see that it runs.' };
  }
}

/** Sends while the page goes away; nobody is there for an answer. */
export function leave(path: string, what: unknown): void {
  fetch(path, { method: 'POST', body: JSON.stringify(what), keepalive: true }).catch(() => undefined);
}
