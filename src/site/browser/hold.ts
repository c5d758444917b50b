// A page of pictures is shown once its type is there: pictures whose captions break anew in another type would move.

/** No reader waits longer for type than this once the page has come, in milliseconds. */
const LONGEST = 800;

/** Holds the page back from its first line on; where the type is already there, for no time at all. */
export function holdForType(page: HTMLElement): void {
  page.classList.add('hold');
  const show = () => page.classList.remove('hold');
  document.addEventListener('DOMContentLoaded', () => {
    setTimeout(show, LONGEST);
    // Asking for a size lays the page out, and type is asked for by what is laid out.
    document.body.getBoundingClientRect();
    document.fonts.ready.then(show);
  });
}
