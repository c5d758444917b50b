// A line of the entry as a card of fields, and a list of such cards.
import { fieldOf } from './field.ts';
import { button, freshId, made } from './made.ts';
import { filledIn, linesOf, type State, setValue } from './state.ts';
import type { DeskField, DeskLine, DeskList } from './told.ts';

/** What a line is mainly filled in with; its other fields wait below. Lists that aren’t here show all. */
const MAIN: { readonly [list: string]: readonly string[] } = {
  hours: ['part', 'work', 'time', 'line', 'by', 'note'],
  bought: ['what', 'from', 'part', 'price', 'count', 'freight', 'tax', 'bill'],
  outside: ['what', 'from', 'part', 'price', 'tax', 'bill'],
  photos: ['caption', 'alt', 'part', 'shows'],
};

export type Cards = { all: HTMLElement; add: (line: DeskLine['line']) => void; draw: () => void };

/** The cards of a list. `above` gives what stands over a card’s fields. */
export function cardsOf(
  state: State,
  shape: DeskList,
  name: string,
  above: (one: DeskLine) => Node[] = () => [],
): Cards {
  const all = made('div', { class: 'cards' });
  const draw = () => {
    const lines = linesOf(state, shape.list);
    all.replaceChildren(...lines.map((one, n) => card(state, shape, `${name} ${n + 1}`, one, above, draw)));
  };
  draw();
  return {
    all,
    draw,
    add: (line) => {
      linesOf(state, shape.list).push({ line });
      draw();
      all.lastElementChild?.querySelector<HTMLElement>('select, input')?.focus();
      state.changed();
    },
  };
}

function card(
  state: State,
  { list, kinds, fields }: DeskList,
  name: string,
  one: DeskLine,
  above: (one: DeskLine) => Node[],
  redrawAll: () => void,
): HTMLElement {
  const wrong = made('ul', { class: 'wrong' });
  state.wrong.set(one, (says) => wrong.replaceChildren(...says.map((sentence) => made('li', {}, sentence))));
  const inner = made('div', { class: 'fields' });
  const draw = (focus?: string) => {
    if (typeof one.line === 'string')
      return inner.replaceChildren(fieldOf(state, list, one, WORDS, () => {}));
    const all = kinds ? (fields[filledIn(one, 'kind')] ?? []) : (fields[''] ?? []);
    const main = MAIN[list];
    const isMain = ({ key }: DeskField) => !main || main.includes(key) || filledIn(one, key) !== '';
    const first = main ? main.flatMap((key) => all.find((field) => field.key === key) ?? []) : [];
    const others = all.filter(
      (field) => !first.includes(field) && field.key !== (list === 'photos' ? 'file' : ''),
    );
    const drawn = (field: DeskField) => fieldOf(state, list, one, field, () => draw(field.key));
    const more = others.filter((field) => !isMain(field));
    const kind = kinds ? [drawn({ ...KIND, offers: kinds })] : [];
    inner.replaceChildren(
      ...kind,
      ...[...first, ...others.filter(isMain)].map(drawn),
      ...(more.length === 0
        ? []
        : [made('details', { class: 'more' }, made('summary', {}, 'More fields'), ...more.map(drawn))]),
    );
    inner.querySelector('[data-key=kind]')?.addEventListener('input', () => draw('kind'));
    if (focus) inner.querySelector<HTMLElement>(`[data-key="${focus}"]`)?.focus();
  };
  draw();
  const id = freshId();
  return made(
    'fieldset',
    { class: `line ${list}`, 'data-list': list, 'aria-labelledby': id },
    made('legend', { id }, name),
    ...above(one),
    inner,
    wrong,
    button(
      'Take out',
      () => {
        const lines = linesOf(state, list);
        lines.splice(lines.indexOf(one), 1);
        state.wrong.delete(one);
        redrawAll();
        state.changed();
      },
      { class: 'out', 'aria-label': `Take out ${name}` },
    ),
  );
}

const WORDS: DeskField = { key: 'what', says: 'What it is', example: '', needed: true, as: 'text' };
const KIND: DeskField = { key: 'kind', says: 'What was measured', example: '', needed: true, as: 'text' };

/** Carries what a bill has in common on to its next line. */
export function nextOnBill(state: State, list: string): { [key: string]: string } {
  const last = linesOf(state, list).at(-1);
  const bill = last ? filledIn(last, 'bill') : '';
  if (!last || bill === '') return {};
  const next: DeskLine = { line: {} };
  for (const key of ['from', 'bill']) setValue(next, key, filledIn(last, key));
  return next.line as { [key: string]: string };
}
