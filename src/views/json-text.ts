// JSON as the project’s files have it: sets key by key, lists of plain values in one line where they fit.

const WIDTH = 110;

/** A value as JSON that may stand inside a page’s script element: no text in it can end the element. */
export const jsonInPage = (value: unknown): string => JSON.stringify(value).replaceAll('<', '\\u003c');

/** The text of a value, with a line end. Keys without a value are left out. */
export function jsonText(value: unknown): string {
  return `${text(value, 0, 0)}\n`;
}

/** `used` is how much of the first line is taken before the value. */
function text(value: unknown, indent: number, used: number): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inner = ' '.repeat(indent + 2);
  const end = ' '.repeat(indent);
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    const items = value.map((item) => text(item, indent + 2, indent + 2));
    const line = `[${items.join(', ')}]`;
    if (!line.includes('\n') && used + line.length <= WIDTH) return line;
    return `[\n${items.map((item) => inner + item).join(',\n')}\n${end}]`;
  }
  const keys = Object.entries(value).filter(([, held]) => held !== undefined);
  if (keys.length === 0) return '{}';
  const pairs = keys.map(([key, held]) => {
    const name = `${inner}${JSON.stringify(key)}: `;
    // A comma follows.
    return name + text(held, indent + 2, name.length + 1);
  });
  return `{\n${pairs.join(',\n')}\n${end}}`;
}
