// Shows what comes into a file and what goes.
import { made } from './made.ts';
import type { Difference } from './told.ts';

/** A difference, each line with its sign, so that it is told without color too. */
export function differenceOf(lines: Difference, name: string): HTMLElement {
  const sign = { same: ' ', added: '+', gone: '−' };
  const tag = { same: 'span', added: 'ins', gone: 'del' } as const;
  return made(
    'pre',
    { class: 'difference', tabindex: '0', role: 'region', 'aria-label': name },
    ...lines.map(({ how, text }) => made(tag[how], {}, `${sign[how]} ${text}\n`)),
  );
}
