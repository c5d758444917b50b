// Splits a file into front matter and body, and keeps where each value was written.
import matter from 'gray-matter';
import { type Document, isAlias, isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import type { Place, Problem } from './place.ts';

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

/** Splits and parses one file. Every mistake comes back as a problem; what could be read is kept. */
export function splitFrontMatter(file: string, original: string): Split {
  const text = original.replace(/^\uFEFF/, '').replaceAll('\r\n', '\n');
  const problems: Problem[] = [];
  const start: Place = { file, line: 1, column: 1 };
  const fail = (rule: string, place: Place, reason: string, mend: string) =>
    problems.push({ rule, severity: 'error', place, reason, mend });
  const counter = new LineCounter();
  let doc: Document.Parsed | undefined;
  let content = text;
  let raw = '';
  try {
    const parse = (yaml: string) => {
      raw = yaml;
      doc = parseDocument(yaml, { lineCounter: counter, logLevel: 'silent', prettyErrors: false });
      return {};
    };
    const split = matter(text, { engines: { yaml: parse, ...REFUSED } });
    content = split.content;
    if (split.matter !== '' && !/\n---[ \t]*\r?(\n|$)/.test(text)) {
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
  const placeOf = (offset: number): Place => {
    const at = counter.linePos(offset);
    return { file, line: at.line, column: at.line === 1 ? at.col + 3 : at.col };
  };
  if (doc) {
    for (const error of [...doc.errors, ...doc.warnings]) {
      problems.push(yamlProblem(error, placeOf(error.pos[0])));
    }
  }
  const broken = problems.length > 0;
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
    body: { markdown: content, line: text.slice(0, text.length - content.length).split('\n').length },
    at: (path) => placeOf(nodes.offset(path, false)),
    atKey: (path) => placeOf(nodes.offset(path, true)),
    written: (path) => nodes.written(path),
    problems,
    broken: broken || (top !== null && !isMap(top)),
  };
}

class Refusal extends Error {}
const refuse = (language: string) => () => {
  throw new Refusal(language);
};
const REFUSED = Object.fromEntries(
  ['javascript', 'js', 'json', 'coffee', 'coffeescript', 'cson', 'toml'].map((name) => [name, refuse(name)]),
);

type Fail = (rule: string, node: Node | null, reason: string, mend: string) => void;

/** The parsed tree, walked by path. */
class Nodes {
  readonly top: unknown;
  readonly raw: string;
  constructor(top: unknown, raw: string) {
    this.top = top;
    this.raw = raw;
  }

  /** Plain values: scalars as written, an empty value as if left out, each map inside a list with its place. */
  plain(node: unknown, depth: number, placeOf: (offset: number) => Place, fail: Fail): unknown {
    if (isAlias(node)) {
      fail(
        'front-matter',
        node,
        `Unexpected \`*${node.source}\`: a value can't stand in for another here.`,
        'Write the value out.',
      );
      return undefined;
    }
    if (isScalar(node)) {
      if (node.value === null) return undefined;
      return typeof node.value === 'string' ? node.value : (node.source ?? String(node.value));
    }
    if (depth > 8) {
      fail(
        'front-matter',
        node as Node,
        'The front matter is nested more than eight deep.',
        'No field of the record goes so deep: take the extra brackets or spaces out.',
      );
      return undefined;
    }
    if (isSeq(node)) {
      return node.items.map((item) => {
        const value = this.plain(item, depth + 1, placeOf, fail);
        if (isMap(item) && typeof value === 'object' && value !== null) {
          Object.assign(value, { place: placeOf(item.range?.[0] ?? 0) });
        }
        return value;
      });
    }
    if (!isMap(node)) return undefined;
    const values: Record<string, unknown> = {};
    for (const { key, value } of node.items) {
      const name = isScalar(key) ? String(key.source ?? key.value) : undefined;
      if (name === undefined || name === 'place' || name === '__proto__') {
        fail(
          'unknown-key',
          key as Node,
          `Unknown key \`${this.shown(key as Node)}\`.`,
          'Take it out; the list of keys is in content/README.md.',
        );
        continue;
      }
      if (isScalar(value) && value.value === null && this.cutByComment(value)) {
        fail(
          'front-matter',
          key as Node,
          `\`${name}\` has no value: a \`#\` begins a comment.`,
          `Put quotes round the value: \`${name}: "#…"\`.`,
        );
      }
      const plain = this.plain(value, depth + 1, placeOf, fail);
      if (plain !== undefined) values[name] = plain;
    }
    return values;
  }

  offset(path: Path, key: boolean): number {
    let node: unknown = this.top;
    let offset = (node as Node | null)?.range?.[0] ?? 0;
    path.forEach((step, depth) => {
      const last = depth === path.length - 1;
      const next = child(node, step);
      if (next?.offset === undefined) {
        node = undefined;
        return;
      }
      offset = last && key ? (next.key ?? next.offset) : next.offset;
      node = next.node;
    });
    return offset;
  }

  written(path: Path): string {
    let node: unknown = this.top;
    for (const step of path) node = child(node, step)?.node;
    return node === undefined || node === null ? '' : this.shown(node as Node);
  }

  shown(node: Node): string {
    const [from = 0, to = 0] = node.range ?? [];
    const text = this.raw.slice(from, to).replace(/\s+/g, ' ').replaceAll('`', '\u02bc').trim();
    return text.length > 60 ? `${text.slice(0, 57)}…` : text;
  }

  cutByComment(value: Node): boolean {
    const from = value.range?.[0] ?? 0;
    return /^[ \t]*#[^\s#]/.test(this.raw.slice(from, this.raw.indexOf('\n', from) + 1 || undefined));
  }
}

function child(node: unknown, step: string | number) {
  if (isSeq(node)) {
    const item = node.items[Number(step)] as Node | undefined;
    return item && { node: item, key: undefined, offset: item.range?.[0] };
  }
  if (!isMap(node)) return undefined;
  const pair = node.items.find(({ key }) => isScalar(key) && String(key.source ?? key.value) === step);
  const value = pair?.value as Node | null | undefined;
  const key = (pair?.key as Node | undefined)?.range?.[0];
  return pair && { node: value, key, offset: value?.range?.[0] ?? key };
}

function whyUnsplit(error: unknown, text: string): [reason: string, mend: string] {
  const opening = text
    .slice(0, text.indexOf('\n') + 1 || undefined)
    .trim()
    .slice(0, 40);
  if (error instanceof RangeError) {
    return [
      'The front matter is nested too deep to be read.',
      'No field of the record goes so deep: take the extra brackets out.',
    ];
  }
  return [
    `Front matter opened with \`${opening}\` isn’t read: only YAML is, and nothing in a log is ever run.`,
    'Open it with `---` alone.',
  ];
}

function yamlProblem(error: { code: string; message: string }, place: Place): Problem {
  const [reason, mend] = YAML_WORDS[error.code] ?? [
    `The front matter can’t be read as YAML: ${error.message.replace(/\s+/g, ' ').replace(/\.?$/, '.')}`,
    'Check the spaces at the start of the line, and put quotes round text that holds `:` or `#`.',
  ];
  return { rule: 'front-matter', severity: 'error', place, reason, mend };
}

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
