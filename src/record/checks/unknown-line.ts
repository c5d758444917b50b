// Finds planned lines that entries name and that no part plans.
import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';
import { plannedLines } from './planned-lines.ts';
import { unknownNames } from './unknown-name.ts';

export const unknownLine: Check = {
  rule: 'unknown-line',
  severity: 'error',
  why: 'Work on a line that nobody planned can’t be held against its estimate.',
  run: (record) => {
    const parts = new Set(record.parts.map(({ id }) => id));
    const lines = mentions(record).filter(
      ({ refers, entry, name, written }) =>
        // An unknown part is told once, at the part.
        refers === 'line' &&
        entry &&
        (written.includes('/') || !name.includes('/') || parts.has(partOf(name))),
    );
    return unknownNames(
      lines,
      new Set(plannedLines(record).keys()),
      ({ name }) =>
        name.includes('/')
          ? `\`${name}\` is no planned line of this record.`
          : `\`${name}\` is the name of a line, and no part is said.`,
      ({ name }) =>
        name.includes('/') && parts.has(partOf(name))
          ? `Plan it in parts/${partOf(name)}.md, or leave \`line\` out.`
          : 'Write the part before it, such as `rear-fender-left/lower-edge`.',
    );
  },
};

const partOf = (name: string) => name.slice(0, name.indexOf('/'));
