// The car from above: a place on it offers the parts that are there.
import { button, made } from './made.ts';
import type { Offer } from './told.ts';

/** `take` is told the part that was chosen. */
export function pickOnDrawing(parts: readonly Offer[], take: (part: string) => void): HTMLElement[] {
  const template = document.querySelector<HTMLTemplateElement>('#plan');
  const drawing = template?.content.cloneNode(true);
  const offered = made('p', { class: 'offered', role: 'status' });
  if (!(drawing instanceof DocumentFragment)) return [];
  for (const place of drawing.querySelectorAll<SVGGElement>('g[data-at]')) {
    const there = parts.filter(({ at }) => at === place.dataset.at);
    if (there.length === 0) continue;
    const name = there.map(({ label }) => label).join(', ');
    // The name that a pointer shows is the one that is read aloud.
    place.querySelector('title')?.replaceChildren(name);
    for (const [key, value] of Object.entries({ role: 'button', tabindex: '0', 'aria-label': name }))
      place.setAttribute(key, value);
    const press = () => {
      const [only, another] = there;
      if (only && !another) take(only.value);
      else
        offered.replaceChildren(
          'There: ',
          ...there.map(({ value, label }) => button(label, () => take(value))),
        );
    };
    place.addEventListener('click', press);
    place.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      event.preventDefault();
      press();
    });
  }
  return [made('div', { class: 'plan' }, drawing), offered];
}
