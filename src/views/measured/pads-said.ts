// What is to be done about the pads, in sentences.
import { workedText } from '../../figures/length-text.ts';
import { millimetres, type Units } from '../../figures/lengths.ts';
import type { CarRecord } from '../../record/record.ts';
import type { FitUp } from '../../rollup/measured/pads.ts';
import { figureText } from './figure-text.ts';
import { type Change, countText, listText, padsText } from './pad-text.ts';

/** `answer` says what is to be done, `takes` what the stock gives and gets back, `remains` what is left then. */
export type PadsSaid = { answer: string; takes: string; remains: string };

/** `still` is false when stacks were changed since the fit-up was read. */
export function padsSaid(last: FitUp | undefined, still: boolean, units: Units): PadsSaid {
  const nothing = (answer: string) => ({ answer, takes: '', remains: '' });
  if (!last) return nothing('No heights were read over these stacks yet, so no change can be worked out.');
  if (!still) {
    return nothing(
      'Stacks were changed since the heights were last read. Read them again before anything else is changed.',
    );
  }
  if (!last.proposal.ok) return nothing(last.proposal.why);
  const { possible, proved, plan, why } = last.proposal.value;
  const names = listText(plan.mounts.filter(isChanged).map(({ id }) => id));
  const count = countText(plan.changes, 'stack');
  const remains = [
    `${plan.changes === 0 ? 'No' : 'Then no'} height is further than ${figureText(plan.furthest, units)} from one plane${twistText(plan, units)}.`,
    last.tolerance === undefined ? '' : `Asked is ${workedText(last.tolerance, units)} either way.`,
    proved ? '' : 'The search was cut short: fewer changes may do.',
  ].filter((text) => text !== '');
  const answer = possible
    ? plan.changes === 0
      ? 'Nothing to change: every mount is where it should be.'
      : `${count.replace(/^./u, (letter) => letter.toUpperCase())} of ${plan.mounts.length} to change: ${names}.`
    : `${why ?? ''} The nearest changes ${count}${names && `: ${names}`}.`;
  return { answer, takes: takesText(plan.taken, units), remains: remains.join(' ') };
}

/** The fewest changes of a fit-up, for a cell of a table. */
export function fewestText({ proposal }: FitUp): string {
  if (!proposal.ok) return proposal.why;
  const { possible, plan } = proposal.value;
  if (!possible) return 'it could not be done with these pads';
  if (plan.changes === 0) return 'nothing to change';
  return `${countText(plan.changes, 'stack')}: ${listText(plan.mounts.filter(isChanged).map(({ id }) => id))}`;
}

/** `Pads in stock: 14 of 1/16 in; 1/8 in, as many as wanted.` */
export function stockText({ shop, units }: CarRecord): string {
  if (!shop.pads) return 'shop.md names no pads in stock.';
  const each = shop.pads.map(({ thickness, count }) => {
    const size = padsText([millimetres(thickness.length)], units);
    return count === undefined ? `${size}, as many as wanted` : `${count} of ${size}`;
  });
  return `Pads in stock: ${each.join('; ')}.`;
}

export const isChanged = ({ takeOut, putIn }: Change): boolean => takeOut.length + putIn.length > 0;

/** `From stock: 1 of 1/16 in. Back into it: 2 of 1/8 in.` */
function takesText(taken: readonly { thickness: number; count: number }[], units: Units): string {
  const list = (sign: 1 | -1) =>
    taken
      .filter(({ count }) => count * sign > 0)
      .map(({ thickness, count }) => `${count * sign} of ${padsText([thickness], units)}`)
      .join(', ');
  const [out, back] = [list(1), list(-1)];
  return [out && `From stock: ${out}.`, back && `Back into it: ${back}.`]
    .filter((text) => text !== '')
    .join(' ');
}

function twistText({ twist }: { twist?: { value: number; plusMinus?: number } }, units: Units): string {
  return twist ? `, with a twist of ${figureText({ ...twist, value: Math.abs(twist.value) }, units)}` : '';
}
