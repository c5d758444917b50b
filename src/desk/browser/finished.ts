// Planned lines done today: those of the parts worked on first.
import { made } from './made.ts';
import { filledIn, linesOf, type State } from './state.ts';
import type { Offer } from './told.ts';

/** The lines to tick, and what puts those of today’s parts first again. */
export function finishedOf(state: State): { all: HTMLElement; draw: () => void } {
  const near = made('div', { class: 'ticks' });
  const far = made('div', { class: 'ticks' });
  const older = made('details', {}, made('summary', {}, 'Lines of other parts'), far);
  const said = () => new Set(linesOf(state, 'finished').map(({ line }) => String(line)));
  const draw = () => {
    const open = state.told.offers.line ?? [];
    const there = said();
    const parts = new Set(linesOf(state, 'hours').map((one) => filledIn(one, 'part')));
    const known = new Set(open.map(({ value }) => value));
    const own = [...there]
      .filter((value) => !known.has(value))
      .map((value): Offer => ({ value, label: value }));
    const isNear = ({ value, part }: Offer) => there.has(value) || parts.has(part ?? '');
    near.replaceChildren(...[...own, ...open.filter(isNear)].map((offer) => tick(state, offer, there)));
    far.replaceChildren(...open.filter((offer) => !isNear(offer)).map((offer) => tick(state, offer, there)));
  };
  draw();
  return { all: made('div', {}, near, older), draw };
}

function tick(state: State, { value, label }: Offer, there: ReadonlySet<string>): HTMLElement {
  const box = made('input', { type: 'checkbox', value, checked: there.has(value) });
  box.addEventListener('change', () => {
    const lines = linesOf(state, 'finished');
    // What stood in the file is taken up again as it stood.
    const stood = state.told.lists.finished?.find(({ line }) => line === value);
    if (box.checked) lines.push(stood ? { ...stood } : { line: value });
    else
      lines.splice(
        lines.findIndex(({ line }) => line === value),
        1,
      );
    state.changed();
  });
  return made('label', {}, box, made('span', {}, label === value ? value : `${label} (${value})`));
}
