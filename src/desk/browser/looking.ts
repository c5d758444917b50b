// Asks the desk what the form would come to, shows it, and writes what was shown.
import { differenceOf } from './difference.ts';
import { drawnPage } from './drawn-page.ts';
import { keepForLater } from './later.ts';
import { button, made } from './made.ts';
import { leave, send } from './send.ts';
import { linesOf, type State } from './state.ts';
import type { Conflict, Looked } from './told.ts';

/** How long the page waits for the next key before it asks, in milliseconds. */
const PAUSE = 500;

/** `later` looks once it is quiet, `typed` also keeps what was typed, `open` shows what would be written. */
export type Looking = {
  later: () => void;
  typed: () => void;
  open: () => void;
  side: HTMLElement;
  page: HTMLElement;
  bar: HTMLElement;
};

export function looking(state: State): Looking {
  const sums = made('div', { class: 'sums', role: 'status' });
  const problems = made('div', { class: 'problems', role: 'status' });
  const first = made('p', { class: 'first' });
  const kept = made('p', { class: 'kept-at' });
  const dialog = made('dialog', { class: 'written', 'aria-label': 'What will be written' });
  const page = drawnPage(state);
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;
  let isTyped = false;

  const show = (told: Looked) => {
    for (const [one, tell] of state.wrong) tell(saidOf(state, told, one));
    first.replaceChildren(told.sums[0] ?? '');
    sums.replaceChildren(...told.sums.map((sentence) => made('p', {}, sentence)));
    const count = told.lines.length;
    const inLines =
      count === 0 ? [] : [count === 1 ? '1 line isn’t right yet.' : `${count} lines aren’t right yet.`];
    const changed = told.conflict ? [`${told.conflict.file} was changed by somebody else.`] : [];
    const all = [...changed, ...inLines, ...told.others];
    problems.replaceChildren(
      ...(all.length === 0
        ? [made('p', {}, 'Nothing is wrong.')]
        : [made('ul', {}, ...all.map((one) => made('li', {}, one)))]),
    );
  };
  const tellKept = ({ kept: time, files, errors }: Looked) => {
    // What is kept, or says nothing new, may be left.
    if (time !== undefined || (files.length === 0 && errors === 0)) window.onbeforeunload = null;
    kept.replaceChildren(time === undefined ? '' : `Kept at ${time}, not written yet.`);
  };
  const look = async (): Promise<Looked | undefined> => {
    const own = ++asked;
    const typed = isTyped;
    const answer = await send('/look', { form: state.form, typed });
    if (own !== asked) return undefined;
    if (!('looked' in answer)) {
      problems.replaceChildren(made('p', {}, 'says' in answer ? answer.says : ''));
      return undefined;
    }
    show(answer.looked);
    if (typed) tellKept(answer.looked);
    return answer.looked;
  };
  const later = () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      waiting = undefined;
      look();
      page.draw();
    }, PAUSE);
  };
  // Who leaves in the middle of a pause leaves nothing behind.
  window.addEventListener('pagehide', () => {
    if (waiting !== undefined && isTyped) leave('/look', { form: state.form, typed: true });
  });
  const open = (...inner: Node[]) => {
    dialog.replaceChildren(...inner);
    if (!dialog.open) dialog.showModal();
  };
  const back = () => button('Back to the day', () => dialog.close());
  const write = async (sign: string) => {
    const answer = await send('/write', { form: state.form, sign });
    if ('said' in answer) {
      sessionStorage.setItem('desk-said', answer.said);
      isTyped = false;
      window.onbeforeunload = null;
      location.replace(`/?day=${state.form.entry}`);
      return;
    }
    if ('looked' in answer) show(answer.looked);
    const conflict = 'looked' in answer ? answer.looked.conflict : undefined;
    const says = 'says' in answer ? answer.says : '';
    open(
      ...(conflict ? both(state, conflict) : [made('h2', {}, 'Not written'), made('p', {}, says)]),
      back(),
    );
  };
  const preview = async () => {
    clearTimeout(waiting);
    const told = await look();
    if (!told) return;
    if (told.conflict) return open(...both(state, told.conflict), back());
    const files = told.files.map(({ file, difference }) =>
      made('section', {}, made('h3', {}, file), differenceOf(difference, file)),
    );
    const shown = drawnPage(state, page.all.open);
    shown.draw();
    const stops = told.errors > 0 || files.length === 0;
    open(
      made('h2', {}, files.length === 0 ? 'There is nothing to write yet' : 'What will be written'),
      ...files,
      ...(files.length === 0 ? [] : [shown.all]),
      ...(told.errors > 0
        ? [made('p', {}, 'Something is wrong yet: see what the page says. Nothing can be written before.')]
        : []),
      made(
        'p',
        { class: 'ends' },
        ...(stops ? [] : [button('Write it', () => write(told.sign), { class: 'do' }), ' ']),
        back(),
      ),
    );
  };
  return {
    later,
    typed: () => {
      isTyped = true;
      window.onbeforeunload = () => '';
      later();
    },
    open: preview,
    page: page.all,
    side: made(
      'section',
      { class: 'side', 'aria-label': 'What the day comes to' },
      made('h2', {}, 'What it comes to'),
      sums,
      made('h2', {}, 'What check says'),
      problems,
    ),
    bar: made(
      'div',
      { class: 'bar' },
      made('div', {}, first, kept),
      button('See what will be written', preview, { class: 'do' }),
      dialog,
    ),
  };
}

function saidOf(state: State, { lines }: Looked, one: unknown): string[] {
  return lines.find(({ list, n }) => linesOf(state, list)[n] === one)?.says ?? [];
}

/** Both sides of a file that changed in the meantime. */
function both(state: State, { file, theirs, mine }: Conflict): Node[] {
  return [
    made('h2', {}, 'Somebody else changed the file'),
    made('p', {}, `${file} isn’t what was read here, so nothing was written.`),
    made('h3', {}, 'What was done to it'),
    differenceOf(theirs, 'What was done to it'),
    made('h3', {}, 'What you would have written'),
    differenceOf(mine, 'What you would have written'),
    made(
      'p',
      {},
      'Your new lines and words can be carried on to the file as it is now. What you changed in lines that were there, or decided, has to be done again.',
    ),
    button('Take the file as it is now, and carry mine on', () => {
      keepForLater(state);
      window.onbeforeunload = null;
      location.reload();
    }),
    ' ',
  ].map((one) => (typeof one === 'string' ? document.createTextNode(one) : one));
}
