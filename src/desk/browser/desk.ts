// The script of the desk’s page: what was told becomes a form, and the form is looked at while it is filled in.
import { cardsOf, nextOnBill } from './card.ts';
import { decisionOf } from './decision.ts';
import { askOfDraft } from './draft.ts';
import { pickOnDrawing } from './drawing.ts';
import { finishedOf } from './finished.ts';
import { isCarried, takeUp } from './later.ts';
import { looking } from './looking.ts';
import { button, freshId, made } from './made.ts';
import { others, words } from './more.ts';
import { picturesOf } from './pictures.ts';
import { formOf, type State } from './state.ts';
import type { DeskList, Form, Told } from './told.ts';

function start(told: Told, place: HTMLElement): void {
  const begin = (form: Form) => fillIn(told, form, place);
  if (told.draft && !isCarried(told.entry)) {
    place.replaceChildren(askOfDraft(told, begin));
    show(place);
  } else begin(formOf(told));
}

function fillIn(told: Told, form: Form, place: HTMLElement): void {
  let touched = () => {};
  const state: State = { told, form, changed: () => touched(), wrong: new Map() };
  const carried = takeUp(state);
  const look = looking(state);
  const finished = finishedOf(state);
  const shape = (list: string): DeskList =>
    told.shapes.find((one) => one.list === list) ?? { list, says: '', fields: {} };
  const hours = cardsOf(state, shape('hours'), 'Hours');
  const addHours = (part: string) => {
    const work = told.offers.part?.find(({ value }) => value === part)?.work ?? '';
    hours.add({ ...(part === '' ? {} : { part }), ...(work === '' ? {} : { work }) });
  };
  const [bought, outside] = [
    cardsOf(state, shape('bought'), 'Bought'),
    cardsOf(state, shape('outside'), 'Outside'),
  ];
  const measured = cardsOf(state, shape('measured'), 'Reading');
  place.replaceChildren(
    made(
      'div',
      { class: 'form' },
      section(
        'Hours',
        person(state),
        ...pickOnDrawing(told.offers.part ?? [], addHours),
        partList(told, addHours),
        hours.all,
      ),
      section(
        'Bills',
        bought.all,
        button('Add a thing bought', () => bought.add(nextOnBill(state, 'bought'))),
        ' ',
        button('Add work done outside', () => outside.add(nextOnBill(state, 'outside'))),
        outside.all,
      ),
      section(
        'Measurements',
        measured.all,
        button('Add a reading', () => measured.add({ kind: 'level' })),
      ),
      section('Photographs', ...picturesOf(state, shape('photos'))),
      section('Finished', finished.all),
      section('A decision', ...decisionOf(state)),
      section('The words', words(state)),
      section('Anything else', ...others(state)),
    ),
    look.side,
    look.page,
    look.bar,
  );
  show(place);
  touched = () => {
    finished.draw();
    look.typed();
  };
  if (carried) touched();
  else look.later();
  // What was typed upon a file that is another now is shown against it.
  if (form === told.draft?.form && told.draft.theirs) look.open();
}

/** Puts the form where the entry stood to be read. */
function show(place: HTMLElement): void {
  const reading = document.querySelector<HTMLElement>('#reading');
  if (reading) reading.hidden = true;
  place.hidden = false;
}

function section(name: string, ...inner: (Node | string)[]): HTMLElement {
  const id = freshId();
  return made('section', { 'aria-labelledby': id }, made('h2', { id }, name), ...inner);
}

function person({ told, form, changed }: State): Node {
  const people = told.offers.person ?? [];
  if (people.length < 2) return document.createTextNode('');
  const id = freshId();
  const control = made(
    'select',
    { id },
    made('option', { value: '' }, 'said in each line'),
    ...people.map(({ value, label }) => made('option', { value, selected: value === form.by }, label)),
  );
  control.addEventListener('input', () => {
    form.by = control.value;
    changed();
  });
  return made('div', { class: 'field' }, made('label', { for: id }, 'Who worked'), control);
}

function partList({ offers }: Told, add: (part: string) => void): HTMLElement {
  const id = freshId();
  const control = made(
    'select',
    { id },
    made('option', { value: '' }, 'the car as a whole'),
    ...(offers.part ?? []).map(({ value, label }, n) => made('option', { value, selected: n === 0 }, label)),
  );
  return made(
    'div',
    { class: 'field choose' },
    made('label', { for: id }, 'Or a part from the list'),
    control,
    button('Add hours', () => add(control.value)),
  );
}

const place = document.querySelector<HTMLElement>('#desk');
const text = document.querySelector('#told')?.textContent;
if (place && text) {
  start(JSON.parse(text) as Told, place);
  const said = sessionStorage.getItem('desk-said');
  sessionStorage.removeItem('desk-said');
  if (said !== null) place.before(made('p', { class: 'lead done', role: 'status' }, said));
}
