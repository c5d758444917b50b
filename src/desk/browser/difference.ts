// Shows what comes into a file and what goes.
import { made } from './made.ts';
import type { Difference } from './told.ts';

/** So many lines that stay are shown on each side of one that doesn’t. */
const AROUND = 3;

/** A difference, each line with its sign, so that it is told without color too. Long stretches that stay are left out. */
export function differenceOf(lines: Difference, name: string): HTMLElement {
  const sign = { same: ' ', added: '+', gone: '−' };
  const tag = { same: 'span', added: 'ins', gone: 'del' } as const;
  return made(
    'pre',
    { class: 'difference', tabindex: '0', role: 'region', 'aria-label': name },
    ...lines.flatMap(({ how, text }, at) => {
      const left = leftOut(lines, at);
      if (left === 0) return [made(tag[how], {}, `${sign[how]} ${text}\n`)];
      return isFirst(lines, at)
        ? [made('span', { class: 'left' }, `  ${left} lines stay as they are\n`)]
        : [];
    }),
  );
}

/** How many lines are left out where this one stands; none where it is shown. */
function leftOut(lines: Difference, at: number): number {
  if (!isFar(lines, at)) return 0;
  let [from, to] = [at, at];
  while (isFar(lines, from - 1)) from -= 1;
  while (isFar(lines, to + 1)) to += 1;
  // A line or two take no more room than the words that stand for them.
  return to - from < AROUND ? 0 : to - from + 1;
}

const isFirst = (lines: Difference, at: number) => !isFar(lines, at - 1);

/** True where no line near this one comes or goes. */
function isFar(lines: Difference, at: number): boolean {
  if (at < 0 || at >= lines.length) return false;
  return lines.slice(Math.max(0, at - AROUND), at + AROUND + 1).every(({ how }) => how === 'same');
}
