// Asks for what all test files of a run share; `share.ts` answers.
import { inject } from 'vitest';

/** The path of what is shared under a name: an audience’s site of the demo, or the browser. Throws why it couldn’t be made. */
export async function shared(name: string): Promise<string> {
  const answer = await fetch(new URL(name, inject('shared')));
  const text = await answer.text();
  if (!answer.ok) throw new Error(text);
  return text;
}
