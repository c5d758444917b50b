// Changes the words of a file, below the front matter.
import type { Splice } from './splice.ts';

/** Words behind those that are there, a blank line between; what the file ends with stays its end. */
export function appendWords(text: string, bodyStart: number, words: string): Splice[] {
  const said = words.trim();
  if (said === '') return [];
  const body = text.slice(bodyStart);
  const spoken = body.trimEnd();
  if (spoken === '') return replaceWords(text, bodyStart, words);
  // Behind the whole last line, with the spaces at its end.
  const lineEnd = body.indexOf('\n', spoken.length);
  const at = bodyStart + (lineEnd < 0 ? body.length : lineEnd);
  return [{ from: at, to: at, text: `\n\n${said}` }];
}

/** Other words. Front matter and words are a blank line apart; without words nothing but its last line is left. */
export function replaceWords(text: string, bodyStart: number, words: string): Splice[] {
  const said = words.replace(/^(?:[ \t]*\n)+/, '').trimEnd();
  const body = text.slice(bodyStart);
  const before = text.slice(0, bodyStart);
  const gap = bodyStart === 0 ? '' : /^(?:[ \t]*\n)+/.exec(body)?.[0] || '\n';
  const closed = bodyStart === 0 || before.endsWith('\n') ? '' : '\n';
  const tail = /\n$/.test(body) || body === '' ? '\n' : '';
  return [{ from: bodyStart, to: text.length, text: said === '' ? '' : `${closed}${gap}${said}${tail}` }];
}
