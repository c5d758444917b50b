// Finds pictures in photos/ that no entry names.
import { mentions } from '../mentions.ts';
import type { Check } from './check.ts';

export const photoNeverNamed: Check = {
  rule: 'photo-never-named',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'A picture that no day names has no caption, and nobody will know later what it shows.',
  run: (record) => {
    const namedOnes = new Set(
      mentions(record).flatMap(({ refers, name, entry }) => (refers === 'photo' && entry ? [name] : [])),
    );
    return record.photos
      .filter((path) => !namedOnes.has(path))
      .map((path) => ({
        place: { file: path, line: 1, column: 1 },
        reason: 'No entry names this picture.',
        mend: `Write it under \`photos\` of its day: \`- { file: ${path.split('/').at(-1)}, caption: … }\`.`,
      }));
  },
};
