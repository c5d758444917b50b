// YAML's own complaints in the words of a shop.
import type { Place, Problem } from './place.ts';

/** Of one file’s mistakes the first are told: after these the rest mostly follows from them. */
const MOST_TOLD = 20;

type YamlError = { code: string; message: string };

/** The problems of one file, in the order of its lines; of many the first ones, and at the next how many are left. */
export function yamlProblems<E extends YamlError>(
  errors: readonly E[],
  placeOf: (error: E) => Place,
): Problem[] {
  const told = errors.slice(0, MOST_TOLD).map((error) => yamlProblem(error, placeOf(error)));
  const [next, ...others] = errors.slice(MOST_TOLD);
  if (!next) return told;
  const left = others.length + 1;
  return [
    ...told,
    {
      rule: 'front-matter',
      severity: 'error',
      place: placeOf(next),
      reason: `${left === 1 ? '1 more mistake' : `${left.toLocaleString('en-US')} more mistakes`} of this kind from here on.`,
      mend: 'Mend those above first: one mistake often makes others after it.',
    },
  ];
}

/** A problem from an error of the YAML parser. */
function yamlProblem(error: YamlError, place: Place): Problem {
  const known = error.message.includes('call stack') ? TOO_DEEP : YAML_WORDS[error.code];
  const [reason, mend] = known ?? [
    `The front matter can’t be read as YAML: ${error.message.replace(/\s+/g, ' ').replace(/\.?$/, '.')}`,
    'Check the spaces at the start of the line, and put quotes round text that holds `:` or `#`.',
  ];
  return { rule: 'front-matter', severity: 'error', place, reason, mend };
}

/** Brackets within brackets, more than the parser can follow. */
export const TOO_DEEP: [reason: string, mend: string] = [
  'The front matter is nested too deep to be read.',
  'No field of the record goes so deep: take the extra brackets out.',
];

const YAML_WORDS: Record<string, [reason: string, mend: string]> = {
  DUPLICATE_KEY: ['This key stands twice.', 'Put both values under one key, or take one out.'],
  MULTIPLE_DOCS: [
    'A line of dots or dashes ends the front matter here, and more of it follows.',
    'Take that line out, or move what follows up.',
  ],
  TOO_MANY_KEYS: [
    'More than a thousand keys stand here, and no set of the record has so many.',
    'Take out what was pasted in.',
  ],
  TAB_AS_INDENT: ['A tab is used to indent.', 'Use spaces.'],
  BAD_INDENT: [
    'This line is indented differently from the lines of its list.',
    'Begin it under the first key of the line above.',
  ],
  BLOCK_AS_IMPLICIT_KEY: [
    'A second `: ` stands in this line, so it reads as a key within a key.',
    'Put quotes round the text.',
  ],
  MISSING_CHAR: [
    'A quote or a bracket is opened and never closed.',
    'Close it, or put the whole value in the other kind of quotes.',
  ],
  TAG_RESOLVE_FAILED: [
    'A value begins with `!`, which YAML keeps for itself.',
    'Put quotes round the value.',
  ],
};
