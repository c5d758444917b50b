// The words of the day, and what is seldom written.
import { cardsOf } from './card.ts';
import { button, freshId, made } from './made.ts';
import type { State } from './state.ts';

/** Lists that have a section of their own; the others are chosen from one. */
const OWN = new Set(['hours', 'bought', 'outside', 'measured', 'photos', 'finished']);

export function words({ form, changed }: State): HTMLElement {
  const id = freshId();
  const control = made('textarea', { id, rows: '6', spellcheck: 'true' });
  control.value = form.words;
  control.addEventListener('input', () => {
    form.words = control.value;
    changed();
  });
  return made(
    'div',
    { class: 'field full' },
    made('label', { for: id }, 'What was found, what was done, and why'),
    control,
  );
}

/** Lists that are seldom needed: those in use stand there, any other can be begun. */
export function others(state: State): Node[] {
  const shapes = state.told.shapes.filter(({ list }) => !OWN.has(list));
  const all = shapes.map((shape) => ({
    shape,
    cards: cardsOf(state, shape, shape.list.replaceAll('-', ' ')),
  }));
  const id = freshId();
  const control = made(
    'select',
    { id },
    ...shapes.map(({ list, says }) => made('option', { value: list }, says.replace(/\.$/, ''))),
  );
  const add = () => {
    const one = all.find(({ shape }) => shape.list === control.value);
    one?.cards.add(one.shape.list === 'shop-only' ? '' : {});
  };
  return [
    ...all.map(({ cards }) => cards.all),
    made(
      'div',
      { class: 'field choose' },
      made('label', { for: id }, 'More to write'),
      control,
      button('Add it', add),
    ),
  ];
}
