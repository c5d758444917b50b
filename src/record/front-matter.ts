// Splits a file into front matter and body, and keeps where each value was written.
import matter from 'gray-matter';
import { type Document, isMap, LineCounter, type Node, parseDocument } from 'yaml';
import { keyMistakes } from './key-mistakes.ts';
import { lostFrontMatter } from './lost-front-matter.ts';
import { Nodes } from './nodes.ts';
import type { Place, Problem } from './place.ts';
import { plainFrontMatter, plainOffset, plainValues } from './plain-front-matter.ts';
import { TOO_DEEP, yamlProblems } from './yaml-problem.ts';

/** A path into the front matter: keys and positions in lists. */
export type Path = readonly (string | number)[];

/** A file split: plain values (all scalars as they were written), the body, and a place for any path. */
export type Split = {
  values: Record<string, unknown>;
  body: { markdown: string; line: number };
  /** The place of a value, or of the nearest thing around it that is there. */
  at: (path: Path) => Place;
  /** The place of a key rather than of its value. */
  atKey: (path: Path) => Place;
  /** A value as it stands in the file, shortened for a message. */
  written: (path: Path) => string;
  problems: Problem[];
  /** The front matter couldn't be read at all, so nothing can be said of its fields. */
  broken: boolean;
};

/**
 * Splits and parses one file. Every mistake comes back as a problem; what could be read is kept. Front matter that is
 * plainly written isn't parsed with all of YAML, unless `whole` asks for it: the result is the same.
 */
export function splitFrontMatter(file: string, original: string, whole = false): Split {
  const text = original.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const problems: Problem[] = [];
  const start: Place = { file, line: 1, column: 1 };
  const fail = (rule: string, place: Place, reason: string, mend: string) =>
    problems.push({ rule, severity: 'error', place, reason, mend });
  const counter = new LineCounter();
  let doc: Document.Parsed | undefined;
  let plain: ReturnType<typeof plainFrontMatter>;
  let content = text;
  let raw = '';
  try {
    const parse = (yaml: string) => {
      raw = yaml;
      plain = whole ? undefined : plainFrontMatter(yaml);
      if (plain) {
        for (let line = 0; line >= 0; line = nextLine(yaml, line)) counter.addNewLine(line);
        return {};
      }
      doc = parseDocument(yaml, {
        lineCounter: counter,
        // At “silent” a second document is passed over.
        logLevel: 'error',
        prettyErrors: false,
        uniqueKeys: false,
      });
      return {};
    };
    const split = matter(text, { engines: { yaml: parse, ...REFUSED } });
    content = split.content;
    if (split.matter && !/\n---[ \t]*\r?(\n|$)/.test(text)) {
      fail(
        'front-matter',
        start,
        'The front matter that opens with `---` is never closed.',
        'Put a line `---` after its last key.',
      );
    }
  } catch (error) {
    fail('front-matter', start, ...whyUnsplit(error, text));
  }
  const bodyLine = text.slice(0, text.length - content.length).split('\n').length;
  problems.push(...lostFrontMatter(file, text, bodyLine));
  const placeOf = (offset: number): Place => {
    const at = counter.linePos(offset);
    // Without any front matter the counter knows no line.
    if (at.line < 1) return start;
    return { file, line: at.line, column: at.line === 1 ? at.col + 3 : at.col };
  };
  if (doc) {
    problems.push(
      ...yamlProblems(inOrder([...doc.errors, ...doc.warnings, ...keyMistakes(doc.contents)]), (error) =>
        placeOf(error.pos[0]),
      ),
    );
  }
  const broken = problems.length > 0;
  if (plain) {
    const top = plain;
    return {
      values: broken ? {} : (plainValues(top, placeOf) as Record<string, unknown>),
      body: { markdown: content, line: bodyLine },
      at: (path) => placeOf(plainOffset(top, path, false)),
      atKey: (path) => placeOf(plainOffset(top, path, true)),
      written: (path) => splitFrontMatter(file, original, true).written(path),
      problems,
      broken,
    };
  }
  const top = doc?.contents ?? null;
  const nodes = new Nodes(top, raw);
  const values: Record<string, unknown> = {};
  if (isMap(top) && !broken) {
    Object.assign(
      values,
      nodes.plain(top, 0, placeOf, (rule, node, reason, mend) =>
        fail(rule, placeOf(node?.range?.[0] ?? 0), reason, mend),
      ),
    );
  } else if (top !== null && !broken) {
    fail(
      'front-matter',
      placeOf(top.range?.[0] ?? 0),
      `Unexpected \`${nodes.shown(top as Node)}\`, expected keys with values.`,
      'Write `key: value`, one a line, between the `---` lines.',
    );
  }
  return {
    values,
    body: { markdown: content, line: bodyLine },
    at: (path) => placeOf(nodes.offset(path, false)),
    atKey: (path) => placeOf(nodes.offset(path, true)),
    written: (path) => nodes.written(path),
    problems,
    broken: broken || nodes.aliased || (top !== null && !isMap(top)),
  };
}

/** Where the next line begins; less than nothing after the last. */
const nextLine = (text: string, line: number) => text.indexOf('\n', line) + 1 || -1;

const inOrder = <E extends { pos: [number, number] }>(errors: readonly E[]): E[] =>
  [...errors].sort((a, b) => a.pos[0] - b.pos[0]);

class Refusal extends Error {}
const refuse = (language: string) => () => {
  throw new Refusal(language);
};
const REFUSED = Object.fromEntries(
  ['javascript', 'js', 'json', 'coffee', 'coffeescript', 'cson', 'toml'].map((name) => [name, refuse(name)]),
);

function whyUnsplit(error: unknown, text: string): [reason: string, mend: string] {
  const opening = text
    .slice(0, text.indexOf('\n') + 1 || undefined)
    .trim()
    .slice(0, 40);
  if (error instanceof RangeError) return TOO_DEEP;
  return [
    `Front matter opened with \`${opening}\` isn’t read: only YAML is, and nothing in a log is ever run.`,
    'Open it with `---` alone.',
  ];
}
