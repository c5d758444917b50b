// Finds pictures whose names differ by a capital, or by the way an accent is written, alone.
import type { CarRecord } from '../record.ts';
import type { Check, Found } from './check.ts';

export const photoNamesAlike: Check = {
  rule: 'photo-names-alike',
  severity: 'warning',
  why: 'On many machines such names are one name, so one picture takes the place of the other when the record is copied.',
  run: ({ photos }: CarRecord): Found[] =>
    // Disks that don't tell capitals apart compare names after Unicode's canonical forms (UAX 15).
    [...Map.groupBy(photos, (path) => path.normalize('NFC').toLowerCase()).values()].flatMap(
      ([first, ...others]) =>
        others.map((path) => ({
          place: { file: path, line: 1, column: 1 },
          reason: `\`${path}\` differs from \`${first}\` by ${difference(path, first ?? '')} alone.`,
          mend: 'Give one of them another name, and mend it where an entry names it.',
          related: [{ file: first ?? path, line: 1, column: 1 }],
        })),
    ),
};

const difference = (a: string, b: string) =>
  a.normalize('NFC') === b.normalize('NFC') ? 'the way an accent is written' : 'capitals';
