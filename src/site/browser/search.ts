// The script of the search: reads the index that stands beside it, and lists what is found as links.
import MiniSearch, { type AsPlainObject, type SearchResult } from 'minisearch';
import { SEARCH, type Searched } from '../../views/live/searched.ts';

/** Links that are listed; the count says how many more there are. */
const LISTED = 50;

const { recordSearch } = globalThis as { recordSearch?: AsPlainObject };
const form = document.querySelector<HTMLFormElement>('form.search');
if (recordSearch && form) start(form, MiniSearch.loadJS(recordSearch, SEARCH));

function start(form: HTMLFormElement, index: MiniSearch<Searched>): void {
  const input = form.querySelector('input') as HTMLInputElement;
  const count = document.querySelector('.found-count') as HTMLElement;
  const list = document.querySelector('.found') as HTMLElement;
  const look = () => {
    const found = index.search(input.value.trim());
    list.replaceChildren(...found.slice(0, LISTED).map(itemOf));
    count.textContent = countText(input.value.trim(), found.length);
  };
  // The words stand in the address, so that going back from a page finds them again.
  const keep = () => {
    try {
      history.replaceState(null, '', `#${encodeURIComponent(input.value.trim())}`);
    } catch {
      // A browser may refuse this to a page from a folder: the search goes on without it.
    }
  };
  input.addEventListener('input', () => {
    look();
    keep();
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    look();
    list.querySelector('a')?.focus();
  });
  document.querySelector('.search-without')?.remove();
  form.hidden = false;
  input.value = wordsOf(location.hash);
  if (input.value) look();
  input.focus();
}

function wordsOf(hash: string): string {
  try {
    return decodeURIComponent(hash.slice(1));
  } catch {
    return '';
  }
}

function countText(asked: string, found: number): string {
  if (asked === '') return '';
  if (found === 0) return `Nothing is found for “${asked}”.`;
  const all = found === 1 ? 'One is found.' : `${found} are found.`;
  return found > LISTED ? `${all} The best ${LISTED} are listed.` : all;
}

function itemOf({ kind, to, title, words }: SearchResult): HTMLElement {
  const link = document.createElement('a');
  link.href = to;
  link.textContent = title;
  const note = document.createElement('span');
  note.className = 'note';
  note.textContent = words ? `${kind}. ${words}` : kind;
  const item = document.createElement('li');
  item.append(link, note);
  return item;
}
