// Asks what to do with what was typed before and isn’t written: nothing is filled in until it is answered.
import { differenceOf } from './difference.ts';
import { button, made } from './made.ts';
import { send } from './send.ts';
import { formOf } from './state.ts';
import type { Form, Told } from './told.ts';

/** `begin` is given the form to go on with. */
export function askOfDraft(told: Told, begin: (form: Form) => void): HTMLElement {
  const { draft, file, day } = told;
  if (!draft) return made('section');
  const { said, form, mine, theirs } = draft;
  const pictures = (form.lists.photos ?? []).filter(({ at }) => at === undefined).length;
  const wrong = made('p', { role: 'status' });
  const drop = async () => {
    const answer = await send('/throw-away', { form: formOf(told) });
    if ('said' in answer) begin(formOf(told));
    else wrong.replaceChildren('says' in answer ? answer.says : '');
  };
  return made(
    'section',
    { class: 'form kept', 'aria-label': 'Not written yet' },
    made('h2', {}, 'Not written yet'),
    made('p', {}, `What you typed ${said} is still here: go on with it, or throw it away.`),
    made(
      'p',
      {},
      button('Go on with it', () => begin(form), { class: 'do' }),
      ' ',
      button('Throw it away', drop),
    ),
    wrong,
    ...(theirs
      ? [
          made('p', {}, `${file} was changed since.`),
          made('h3', {}, 'What was done to it'),
          differenceOf(theirs, 'What was done to it'),
        ]
      : []),
    made('h3', {}, 'What you typed'),
    differenceOf(mine, 'What you typed'),
    ...(pictures === 0
      ? []
      : [
          made(
            'p',
            {},
            `${pictures === 1 ? 'Its picture lies' : `Its ${pictures} pictures lie`} in photos/${day} and ${pictures === 1 ? 'stays' : 'stay'} there, whatever you choose; only the words about ${pictures === 1 ? 'it' : 'them'} aren’t written.`,
          ),
        ]),
  );
}
