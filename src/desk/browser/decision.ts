// A decision of the day: which way of an open choice, who said so, and why.
import { freshId, made } from './made.ts';
import type { State } from './state.ts';
import type { OpenChoice } from './told.ts';

export function decisionOf({ told, form, changed }: State): HTMLElement[] {
  if (told.choices.length === 0) return [made('p', {}, 'No choice is open.')];
  const choice = select(told.choices.map(({ id, question }) => [id, question]));
  const option = select([]);
  const by = made('input', { placeholder: 'such as the owner, by telephone', autocomplete: 'off' });
  const reason = made('textarea', { rows: '2' });
  const fields = made(
    'div',
    { class: 'fields', hidden: true },
    labelled('option', option),
    labelled('decided by', by),
    labelled('reason', reason, ' full'),
  );
  const chosen = (): OpenChoice | undefined => told.choices.find(({ id }) => id === choice.value);
  const fill = () => {
    const one = chosen();
    fields.hidden = !one;
    if (one) {
      const { id, read } = one;
      form.decided = { choice: id, read, option: option.value, by: by.value, reason: reason.value };
    } else delete form.decided;
    changed();
  };
  choice.addEventListener('input', () => {
    option.replaceChildren(
      made('option', { value: '' }, 'choose'),
      ...(chosen()?.options ?? []).map(({ value, label }) => made('option', { value }, label)),
    );
    fill();
  });
  for (const control of [option, by, reason]) control.addEventListener('input', fill);
  return [labelled('open choice', choice, ' full'), fields];
}

function select(options: readonly (readonly [string, string])[]): HTMLSelectElement {
  return made(
    'select',
    {},
    made('option', { value: '' }, 'none decided today'),
    ...options.map(([value, label]) => made('option', { value }, label)),
  );
}

function labelled(says: string, control: HTMLElement, more = ''): HTMLElement {
  control.id = freshId();
  return made('div', { class: `field${more}` }, made('label', { for: control.id }, says), control);
}
