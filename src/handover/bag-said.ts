// What is told of a bag that was checked: each fault in a line, then the answer.
import type { Checked } from './bag-check.ts';

/** Faults first, by kind and file; then what a keeper should know; the answer last. */
export function checkedText({ faults, notes, files, octets, algorithms }: Checked): string {
  const lines = faults.map(
    ({ what, file, line, says }) =>
      `${what.padEnd(8)} ${printable(file)}${line ? `:${line}` : ''}  ${printable(says)}.`,
  );
  const many = `${files} ${files === 1 ? 'file' : 'files'}, ${sizeText(octets)}`;
  const answer =
    faults.length === 0
      ? `The bag is whole: ${many}, each checked by ${algorithms.join(' and ')}.`
      : `The bag is not as it was made: ${faults.length} ${faults.length === 1 ? 'fault' : 'faults'} (${tally(faults)}); ${many} looked at.`;
  return [...lines, ...notes.map((note) => `note     ${printable(note)}`), answer].join('\n');
}

/** `48.2 MB`: decimal, as disks are sold. */
export function sizeText(octets: number): string {
  if (octets < 1000) return `${octets} bytes`;
  const [size, unit] =
    octets < 1e6 ? [octets / 1e3, 'kB'] : octets < 1e9 ? [octets / 1e6, 'MB'] : [octets / 1e9, 'GB'];
  return `${size.toFixed(1)} ${unit}`;
}

function tally(faults: Checked['faults']): string {
  const kinds = Map.groupBy(faults, ({ what }) => what);
  return [...kinds].map(([what, each]) => `${each.length} ${what === 'form' ? 'of form' : what}`).join(', ');
}

/** A name may hold what would steer the terminal, or break the line. */
function printable(text: string): string {
  return text.replace(/\p{Cc}/gu, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
