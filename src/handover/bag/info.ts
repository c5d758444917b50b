// bag-info.txt: what the bag says of itself (RFC 8493, 2.2.2).

/** Label and value, in order; a label may come again. */
export type Info = (readonly [label: string, value: string])[];

/** The text of bag-info.txt; long values go on in indented lines. */
export function infoText(info: Info): string {
  return info
    .map(([label, value]) => `${folded(`${label}: ${value.replace(/\s+/g, ' ').trim()}`)}\n`)
    .join('');
}

/** Reads bag-info.txt; `faults` say which lines have not the form of it. */
export function readInfo(text: string): { info: Info; faults: { line: number; says: string }[] } {
  const info: [string, string][] = [];
  const faults: { line: number; says: string }[] = [];
  for (const [i, line] of linesOf(text).entries()) {
    const last = info.at(-1);
    if (/^[ \t]/.test(line) && last) {
      last[1] += ` ${line.trim()}`;
      continue;
    }
    const [, label, value] = /^([^:]+):[ \t](.*)$/.exec(line) ?? [];
    if (label === undefined || value === undefined || label !== label.trim()) {
      faults.push({ line: i + 1, says: `\`${line}\` is not a label, a colon, one space and a value` });
    } else info.push([label, value]);
  }
  return { info, faults };
}

/** The lines of a tag file, whichever way they end; what follows the last end is a line only if there is something. */
export function linesOf(text: string): string[] {
  const lines = text.split(/\r\n|\r|\n/);
  return lines.at(-1) === '' ? lines.slice(0, -1) : lines;
}

/** The first value of a label; labels are told apart without regard to capitals. */
export function infoOf(info: Info, label: string): string | undefined {
  return info.find(([name]) => name.toLowerCase() === label.toLowerCase())?.[1];
}

/** Lines of at most 79 letters, as the standard recommends. */
function folded(text: string): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > 79) {
      lines.push(line);
      line = `  ${word}`;
    } else line += line === '' ? word : ` ${word}`;
  }
  return [...lines, line].join('\n');
}
