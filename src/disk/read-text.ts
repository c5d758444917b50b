// Reads one text of a record: UTF-8, no larger than a person writes, without what no text has.
import { readFileSync } from 'node:fs';
import type { Problem } from '../record/place.ts';
import { LARGEST_TEXT, type WrittenFile } from '../record/record.ts';

/** The text of a file, or what keeps it from being one. Throws what the system says of a file that can't be opened. */
export function readText(path: string, file: string, size: number): WrittenFile | Problem {
  if (size > LARGEST_TEXT) {
    return wrong(
      file,
      `\`${file}\` is ${(size / 1e6).toFixed(1)} MB: too large for a day’s words, so it isn’t read.`,
      'Keep pictures in photos/, and split the text into days (1 MB at most).',
    );
  }
  const bytes = readFileSync(path);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return wrong(file, `\`${file}\` isn’t UTF-8 text.`, 'Save it again as UTF-8.');
  }
  const nul = text.indexOf('\0');
  if (nul < 0) return { file, text };
  const lines = text.slice(0, nul).split(/\r\n?|\n/);
  return {
    ...wrong(
      file,
      `\`${file}\` holds a NUL byte, which no text has.`,
      'Take it out, or write the line again.',
    ),
    place: { file, line: lines.length, column: (lines.at(-1) ?? '').length + 1 },
  };
}

function wrong(file: string, reason: string, mend: string): Problem {
  return { rule: 'file-unreadable', severity: 'error', place: { file, line: 1, column: 1 }, reason, mend };
}
