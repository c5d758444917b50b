// Pictures: dropped or chosen, brought in one after the other, each with its words.
import { cardsOf } from './card.ts';
import { button, freshId, made } from './made.ts';
import { filledIn, linesOf, type State } from './state.ts';
import type { DeskLine, DeskList } from './told.ts';

/** Bytes that a picture may have; the desk refuses more. */
const MOST = 60_000_000;

export function picturesOf(state: State, shape: DeskList): HTMLElement[] {
  const { told } = state;
  const said = made('p', { role: 'status', class: 'came' });
  const cards = cardsOf(state, shape, 'Picture', (one) => [thumbnail(told.day, one)]);
  const has = (file: string) => linesOf(state, 'photos').some((one) => filledIn(one, 'file') === file);
  const take = (file: string) => {
    if (!has(file)) cards.add({ file });
    waiting.querySelector(`[data-file="${CSS.escape(file)}"]`)?.remove();
  };
  const waiting = made(
    'div',
    { class: 'waiting' },
    ...told.waiting
      .filter((file) => !has(file))
      .map((file) =>
        button(`${file} lies there: say what it shows`, () => take(file), { 'data-file': file }),
      ),
  );
  const bring = async (files: readonly File[]) => {
    const refused: string[] = [];
    for (const [n, file] of files.entries()) {
      said.replaceChildren(`Bringing in ${n + 1} of ${files.length} …`);
      const came = await bringIn(told.day, file);
      if ('file' in came) take(came.file);
      else refused.push(came.refused);
    }
    const count = files.length - refused.length;
    said.replaceChildren(
      [`${count === 1 ? '1 picture' : `${count} pictures`} brought in.`, ...refused].join(' '),
    );
  };
  const id = freshId();
  const input = made('input', {
    id,
    type: 'file',
    multiple: true,
    accept: 'image/jpeg,image/png,image/webp,image/tiff',
  });
  input.addEventListener('change', async () => {
    await bring([...(input.files ?? [])]);
    input.value = '';
  });
  const drop = made(
    'div',
    { class: 'drop' },
    made('label', { for: id }, 'Drop pictures here, or choose them'),
    input,
    made(
      'p',
      { class: 'hint' },
      `They are put into photos/${told.day} at once, and stay there whether the day is written or not.`,
    ),
  );
  drop.addEventListener('dragover', (event) => {
    event.preventDefault();
    drop.classList.add('over');
  });
  drop.addEventListener('dragleave', () => drop.classList.remove('over'));
  drop.addEventListener('drop', (event) => {
    event.preventDefault();
    drop.classList.remove('over');
    bring([...(event.dataTransfer?.files ?? [])]);
  });
  return [drop, said, waiting, cards.all];
}

async function bringIn(day: string, file: File): Promise<{ file: string } | { refused: string }> {
  if (file.size > MOST)
    return {
      refused: `${file.name} has ${Math.round(file.size / 1e6)} MB, and ${MOST / 1e6} MB are the most.`,
    };
  try {
    const asked = new URLSearchParams({ day, name: file.name });
    const answer = await fetch(`/picture?${asked}`, { method: 'POST', body: file });
    if (/json/.test(answer.headers.get('content-type') ?? '')) return await answer.json();
    return { refused: (await answer.text()).trim() };
  } catch {
    return { refused: `${file.name} didn’t come through: the desk can’t be reached.` };
  }
}

function thumbnail(day: string, one: DeskLine): HTMLElement {
  const file = filledIn(one, 'file');
  const asked = new URLSearchParams({ day, file });
  return made(
    'figure',
    { class: 'thumb' },
    made('img', { src: `/picture?${asked}`, alt: '' }),
    made('figcaption', {}, file),
  );
}
