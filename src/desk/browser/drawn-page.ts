// The day’s page as the site will have it, drawn anew at each pause while it is open, and not asked for while it isn’t.
import { made } from './made.ts';
import { send } from './send.ts';
import type { State } from './state.ts';

export type DrawnPage = { all: HTMLDetailsElement; draw: () => void };

/** Closed until somebody opens it; `open` begins it open. */
export function drawnPage(state: State, open = false): DrawnPage {
  const said = made('p', { role: 'status', class: 'came' });
  const place = made('div', { class: 'drawn' });
  const all = made(
    'details',
    { class: 'page', open },
    made('summary', {}, 'The page of the day, as it will be drawn'),
    said,
    place,
  );
  let [asking, again] = [false, false];
  const draw = async () => {
    if (!all.open) return;
    again = asking;
    if (asking) return;
    asking = true;
    if (!place.hasChildNodes()) said.replaceChildren('The page is being drawn; the first one takes a while.');
    const answer = await send('/preview', { form: state.form });
    if ('page' in answer) await show(place, answer.page);
    said.replaceChildren('page' in answer ? '' : 'says' in answer ? answer.says : '');
    place.classList.toggle('old', !('page' in answer));
    asking = false;
    if (again) await draw();
  };
  all.addEventListener('toggle', draw);
  return { all, draw };
}

/** Puts a page in place of the one before once it is there, at the same height. */
async function show(place: HTMLElement, page: string): Promise<void> {
  const before = place.querySelector('iframe:last-child') as HTMLIFrameElement | null;
  const frame = made('iframe', {
    src: page,
    title: 'The page of the day',
    sandbox: 'allow-same-origin',
    class: before ? 'coming' : undefined,
  });
  const there = new Promise((done) => frame.addEventListener('load', done, { once: true }));
  place.append(frame);
  await there;
  frame.contentWindow?.scrollTo(0, before?.contentWindow?.scrollY ?? 0);
  before?.remove();
  frame.classList.remove('coming');
}
