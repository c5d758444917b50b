// The line between a picture and a later one that lie over each other. It is the handle of a range input, so that keys
// and fingers move it as they move any other.

/** Lets every such line of the page be moved, and shows it. */
export function slidePairs(): void {
  for (const slide of document.querySelectorAll<HTMLElement>('.slide')) {
    const range = slide.querySelector('input');
    if (!range) continue;
    const show = () => {
      const share = Number(range.value);
      slide.style.setProperty('--at', String(share / 100));
      const { before, after } = slide.dataset;
      range.setAttribute('aria-valuetext', `${before} ${share}%, ${after?.toLowerCase()} ${100 - share}%`);
    };
    range.addEventListener('input', show);
    show();
    slide.classList.add('live');
  }
}
