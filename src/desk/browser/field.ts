// One field of a line: a list to choose from, a time in quarter hours, or words.
import { readMinutes, writtenTime } from '../../figures/hours.ts';
import { button, freshId, made } from './made.ts';
import { filledIn, type State, setValue } from './state.ts';
import type { DeskField, DeskLine, Offer } from './told.ts';

/** `redrawn` is called when a choice changes what else may be chosen. */
export function fieldOf(
  state: State,
  list: string,
  one: DeskLine,
  field: DeskField,
  redrawn: () => void,
): HTMLElement {
  const { key, says, example, needed, offers, as } = field;
  const [id, hint] = [freshId(), freshId()];
  const value = filledIn(one, key);
  const choices = offers === undefined ? undefined : offersFor(state, one, field);
  const control = choices
    ? made('select', { id, 'aria-describedby': hint, 'data-key': key }, ...optionsOf(choices, value, needed))
    : made('input', {
        id,
        'aria-describedby': hint,
        'data-key': key,
        value,
        placeholder: example === '' ? undefined : `such as ${example}`,
        inputmode: as === 'figure' ? 'decimal' : undefined,
        autocomplete: 'off',
        spellcheck: as === 'text' && !choices ? 'true' : 'false',
      });
  control.addEventListener('input', () => {
    setValue(one, key, control.value);
    if (choices && (key === 'part' || key === 'line')) {
      if (key === 'part') setValue(one, 'line', '');
      if (list === 'hours') likelyWork(state, one);
      redrawn();
    }
    state.changed();
  });
  return made(
    'div',
    { class: `field ${as}${FULL.has(key) ? ' full' : ''}` },
    made('label', { for: id }, key.replaceAll('-', ' ')),
    as === 'time' && control instanceof HTMLInputElement ? stepper(control) : control,
    made('span', { id: hint, class: 'hint' }, `${says}.`),
  );
}

/** Fields that hold a sentence take the whole width. */
const FULL = new Set([
  'note',
  'caption',
  'alt',
  'what',
  'outcome',
  'result',
  'points',
  'reason',
  'no-charge',
]);
const QUARTER = 15;

function stepper(input: HTMLInputElement): HTMLElement {
  const step = (by: number) => () => {
    const now = readMinutes(input.value);
    const minutes = now.ok ? now.value : 0;
    // To the next quarter of an hour in that direction.
    const next = by > 0 ? Math.floor(minutes / QUARTER) + 1 : Math.ceil(minutes / QUARTER) - 1;
    input.value = writtenTime(Math.max(0, next * QUARTER));
    input.dispatchEvent(new Event('input'));
  };
  return made(
    'div',
    { class: 'stepper' },
    button('−', step(-1), { 'aria-label': 'A quarter of an hour less' }),
    input,
    button('+', step(1), { 'aria-label': 'A quarter of an hour more' }),
  );
}

function offersFor({ told }: State, one: DeskLine, { key, offers }: DeskField): Offer[] | undefined {
  if (Array.isArray(offers)) return offers.map((value) => ({ value, label: value }));
  const all = offers && told.offers[offers];
  if (!all || offers !== 'line' || key !== 'line') return all;
  const part = filledIn(one, 'part');
  if (part === '') return all;
  // Beside its part a line’s name stands alone.
  return all
    .filter((offer) => offer.part === part)
    .map((offer) => ({ ...offer, value: offer.value.slice(part.length + 1) }));
}

function optionsOf(offers: readonly Offer[], value: string, needed: boolean): HTMLOptionElement[] {
  const known = value === '' || offers.some((offer) => offer.value === value);
  const all = known ? offers : [{ value, label: value }, ...offers];
  const none = made('option', { value: '', selected: value === '' }, needed ? 'choose' : 'none');
  return [
    none,
    ...all.map(({ value: own, label }) => made('option', { value: own, selected: own === value }, label)),
  ];
}

/** The work of the planned line, else that last done on the part, where none was named. */
function likelyWork({ told }: State, one: DeskLine): void {
  const part = filledIn(one, 'part');
  const line = told.offers.line?.find(({ value }) => value === `${part}/${filledIn(one, 'line')}`);
  const work = line?.work ?? told.offers.part?.find(({ value }) => value === part)?.work ?? '';
  if (work !== '' && (line || filledIn(one, 'work') === '')) setValue(one, 'work', work);
}
