// Texts put into a page, so that nothing in them is read as markup.

/** Text for between tags or in an attribute. */
export function escaped(text: string): string {
  return text.replaceAll(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** Values for a page’s script, where no tag can end them. */
export function dataText(values: unknown): string {
  return JSON.stringify(values).replaceAll('<', '\\u003c');
}
