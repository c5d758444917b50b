// Holds the number in a statement against the name of its file.
import type { Check } from './check.ts';

export const statementNumber: Check = {
  rule: 'statement-number',
  severity: 'error',
  why: 'A statement is found by its number, in the folder and on the owner’s desk.',
  run: ({ statements }) =>
    statements
      .filter(({ id, number }) => id !== number)
      .map(({ id, number, placeAt }) => ({
        place: placeAt(['number']),
        reason: `This is statement \`${number}\`, and its file is named \`${id}.md\`.`,
        mend: `Name the file \`${number}.md\`, as it was issued.`,
      })),
};
