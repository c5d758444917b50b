// Texts put into markup that is made here and not by a component.

/** A text for between tags or in an attribute in double quotes: nothing in it is read as markup. */
export function escaped(text: string): string {
  if (!SIGN.test(text)) return text;
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('"', '&quot;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');
}

/** Most texts have none of them, and are looked through once instead of four times. */
const SIGN = /[&"<>]/;
