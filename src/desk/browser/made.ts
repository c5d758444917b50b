// Makes the elements of the page.

type Attributes = { [name: string]: string | boolean | undefined };

/** An element with attributes and what is in it; an attribute that is false or missing is left out. */
export function made<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...inner: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) element.setAttribute(name, value === true ? '' : value);
  }
  element.append(...inner);
  return element;
}

/** A button that does something on the page. */
export function button(says: string, press: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const one = made('button', { type: 'button', ...attributes }, says);
  one.addEventListener('click', press);
  return one;
}

let ids = 0;
/** An id that no other element has. */
export const freshId = (): string => `n${++ids}`;
