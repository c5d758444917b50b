// Writes one text as YAML: bare where that reads back the same, else in the quotes that need the least inside them.
import { isMap, isScalar, isSeq, parseDocument } from 'yaml';

/**
 * The text as it stands behind a key or a dash, or between braces. With `words`, what YAML would take for a number or
 * for yes and no is quoted, as the number of a bill is.
 */
export function scalarText(text: string, { flow, words }: { flow: boolean; words: boolean }): string {
  return readsBack(text, text, flow, words) ? text : quoted(text);
}

/** Single quotes spare a text with double ones its backslashes; JSON’s quotes are YAML’s too. */
function quoted(text: string): string {
  const single = `'${text.replaceAll("'", "''")}'`;
  return /["\\]/.test(text) && readsBack(single, text, false, false) ? single : JSON.stringify(text);
}

function readsBack(written: string, text: string, flow: boolean, words: boolean): boolean {
  if (/[\n\r\t]/.test(written)) return false;
  const tries = flow
    ? [`{ k: ${written}, z: z }`, `[ ${written}, z ]`]
    : [`k: ${written}\nz: z\n`, `- ${written}\n- z\n`];
  return tries.every((yaml) => {
    const { contents, errors, warnings } = parseDocument(yaml, { logLevel: 'silent', prettyErrors: false });
    if (errors.length + warnings.length > 0) return false;
    const [item, next] = isMap(contents)
      ? [contents.get('k', true), contents.get('z', true)]
      : isSeq(contents)
        ? contents.items
        : [];
    // What stands beside it must have stayed itself.
    if (!isScalar(item) || item.value === null || !isScalar(next) || next.value !== 'z') return false;
    return typeof item.value === 'string' ? item.value === text : !words && item.source === text;
  });
}
