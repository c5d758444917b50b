// The script of pages with pictures: the viewer, and the lines of pairs. It is one classic script, so that it runs from
// a folder; without it a picture's link opens the large picture. All that it shows stands on the page.
import { holdForType } from './hold.ts';
import { slidePairs } from './pair-slider.ts';
import { onSwipe } from './swipe.ts';

holdForType(document.documentElement);
document.addEventListener('DOMContentLoaded', () => {
  const viewer = document.querySelector<HTMLDialogElement>('dialog.viewer');
  if (viewer) start(viewer);
  slidePairs();
});

function start(viewer: HTMLDialogElement): void {
  const place = (name: string) => viewer.querySelector(`.${name}`) as HTMLElement;
  const [count, stage, words, where] = ['count', 'stage', 'words', 'where'].map(place);
  const buttons = new Map(
    [...viewer.querySelectorAll('button')].map((button) => [button.dataset.go ?? '', button]),
  );
  let links: HTMLAnchorElement[] = [];
  let at = 0;

  const show = (to: number) => {
    const link = links[to];
    if (!link) return;
    at = to;
    const { shot = '', day, toDay, part, toPart } = link.dataset;
    count?.replaceChildren(`${at + 1} of ${links.length}`);
    stage?.replaceChildren(pictureOf(link));
    words?.replaceChildren(shot);
    where?.replaceChildren(...linkTo(day, toDay), ...linkTo(part, toPart));
    // A button that is switched off would lose the focus of who pressed it.
    buttons.get('before')?.setAttribute('aria-disabled', String(at === 0));
    buttons.get('after')?.setAttribute('aria-disabled', String(at === links.length - 1));
    for (const beside of [links[at + 1], links[at - 1]]) if (beside) new Image().src = beside.href;
  };

  const go: Record<string, () => void> = {
    before: () => show(at - 1),
    after: () => show(at + 1),
    first: () => show(0),
    last: () => show(links.length - 1),
    close: () => viewer.close(),
  };

  document.addEventListener('click', (event) => {
    const { target, button, altKey, ctrlKey, metaKey, shiftKey } = event;
    if (button !== 0 || altKey || ctrlKey || metaKey || shiftKey || !(target instanceof Element)) return;
    const link = target.closest<HTMLAnchorElement>('a[data-shot]');
    const set = link?.closest('[data-shots]');
    if (!link || !set) return;
    event.preventDefault();
    links = [...set.querySelectorAll<HTMLAnchorElement>('a[data-shot]')];
    viewer.showModal();
    show(links.indexOf(link));
  });
  viewer.addEventListener('click', ({ target }) => {
    if (target instanceof HTMLButtonElement) go[target.dataset.go ?? '']?.();
  });
  viewer.addEventListener('keydown', (event) => {
    const to = KEYS[event.key];
    if (!to || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    go[to]?.();
  });
  if (stage) onSwipe(stage, (way) => go[way]?.());
  // Back to the page where the reader has come to: the picture last seen.
  viewer.addEventListener('close', () => links[at]?.focus());
}

const KEYS: Record<string, string> = { ArrowLeft: 'before', ArrowRight: 'after', Home: 'first', End: 'last' };

/** The large picture of a link, with the small one behind it until it has come. */
function pictureOf(link: HTMLAnchorElement): HTMLImageElement {
  const picture = new Image();
  const small = link.querySelector('img');
  if (small) {
    picture.width = Number(small.getAttribute('width'));
    picture.height = Number(small.getAttribute('height'));
    picture.alt = small.alt;
    picture.style.backgroundImage = `url("${small.currentSrc || small.src}")`;
  }
  picture.src = link.href;
  return picture;
}

function linkTo(text: string | undefined, to: string | undefined): HTMLAnchorElement[] {
  if (!text || !to) return [];
  const link = document.createElement('a');
  link.href = to;
  link.textContent = text;
  return [link];
}
