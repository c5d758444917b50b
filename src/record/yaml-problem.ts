// YAML's own complaints in the words of a shop.
import type { Place, Problem } from './place.ts';

/** A problem from an error of the YAML parser. */
export function yamlProblem(error: { code: string; message: string }, place: Place): Problem {
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
