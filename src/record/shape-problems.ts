// Puts what a schema found wrong into one sentence each: what was written, what was expected, the mend.
import type { z } from 'zod';
import type { Path, Split } from './front-matter.ts';
import { didYouMean, nearest } from './nearest.ts';
import type { Problem } from './place.ts';
import { said, schemaAt } from './schema-at.ts';
import { short } from './short.ts';

type Issue = z.core.$ZodIssue;

/** The problems of one file's front matter, one for each field that is wrong. */
export function shapeProblems(issues: readonly Issue[], split: Split, schema: z.ZodType): Problem[] {
  // A mistyped key is one mistake, not two: the missing key that it stands for isn't told again.
  const meant = new Set(
    issues.flatMap((issue) =>
      issue.code === 'unrecognized_keys'
        ? issue.keys.map((key) => [...issue.path, meantKey(issue, key)].join())
        : [],
    ),
  );
  return issues
    .filter((issue) => !meant.has(issue.path.join()) || split.written(issue.path as Path) !== '')
    .flatMap((issue) => one(issue, split, schema));
}

function one(issue: Issue, split: Split, schema: z.ZodType): Problem[] {
  const path = issue.path as Path;
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      rule: 'unknown-key',
      severity: 'error',
      place: split.atKey([...path, key]),
      reason: `Unknown key \`${short(key.replaceAll('`', '\u02bc'))}\`${where(path)}.`,
      mend: unknownMend(issue, key),
    }));
  }
  const name = String(path.findLast((step) => typeof step === 'string') ?? '');
  const about = said(schemaAt(schema, path));
  const example = about.examples?.[0];
  if (split.written(path) === '') {
    return [
      {
        rule: 'missing-key',
        severity: 'error',
        place: split.at(path),
        reason: `Missing \`${path.at(-1)}\`${where(path.slice(0, -1))}.`,
        mend: `${about.description ?? ''} Write it, for example \`${path.at(-1)}: ${example ?? '…'}\`.`.trim(),
      },
    ];
  }
  return [
    {
      rule: 'unexpected-value',
      severity: 'error',
      place: split.at(path),
      reason: `Unexpected \`${split.written(path)}\`, expected ${expected(issue)}.`,
      ...mendOf(issue, split.written(path), name, example),
    },
  ];
}

type Unknown = Issue & { code: 'unrecognized_keys' };

/** The schema's sentence holds the known keys; the nearest to this one is offered, else all are listed. */
function unknownMend(issue: Unknown, key: string): string {
  const name = meantKey(issue, key);
  return name === undefined ? `Known here: ${issue.message}.` : `Did you mean \`${name}\`?`;
}

function meantKey(issue: Unknown, key: string): string | undefined {
  return nearest(
    key,
    [...issue.message.matchAll(/`(.+?)`/g)].map(([, name = '']) => name),
  );
}

function expected(issue: Issue): string {
  if (issue.code === 'invalid_value')
    return `one of ${issue.values.map((word) => `\`${String(word)}\``).join(', ')}`;
  return issue.message;
}

function mendOf(issue: Issue, written: string, name: string, example: string | undefined) {
  if (issue.code === 'invalid_value') {
    const mend = didYouMean(written, issue.values.map(String));
    return mend === undefined ? {} : { mend };
  }
  return example === undefined || issue.message.includes('`')
    ? {}
    : { mend: `Write for example \`${name}: ${example}\`.` };
}

/** ` in this line of `hours``, ` in `found``, or nothing at the top. */
function where(path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return '';
  const name = path.findLast((step) => typeof step === 'string');
  return typeof last === 'number' ? ` in this line of \`${String(name)}\`` : ` in \`${last}\``;
}
