// Finds pictures whose names some machines can't have.
import { keptByWindows } from '../id.ts';
import type { CarRecord } from '../record.ts';
import type { Check, Found } from './check.ts';

export const photoNameNotEverywhere: Check = {
  rule: 'photo-name-not-everywhere',
  severity: 'warning',
  why: 'A picture whose name another machine can’t have is lost when the record is copied there.',
  run: ({ photos }: CarRecord): Found[] =>
    photos.flatMap((path) => {
      const wrong = path
        .split('/')
        .map(whyNot)
        .find((why) => why !== undefined);
      if (wrong === undefined) return [];
      return [
        {
          place: { file: path, line: 1, column: 1 },
          reason: `The name of \`${path}\` ${wrong}, which Windows doesn’t have.`,
          mend: 'Give it another name, of letters, digits and hyphens, and mend it where an entry names it.',
        },
      ];
    }),
};

/** Microsoft, “Naming Files, Paths, and Namespaces”. */
function whyNot(name: string): string | undefined {
  if (keptByWindows(name)) return `has \`${name}\` in it`;
  if (/[. ]$/.test(name)) return 'has a part that ends in a full stop or a space';
  const sign = /[<>:"|?*\\\p{Cc}]/u.exec(name)?.[0];
  return sign === undefined ? undefined : `holds the sign \`${sign}\``;
}
