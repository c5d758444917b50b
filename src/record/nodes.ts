// The parsed front matter, walked by path: plain values, places, and what was written.
import { isAlias, isMap, isScalar, isSeq, type Node } from 'yaml';
import type { Path } from './front-matter.ts';
import type { Place } from './place.ts';
import { short } from './short.ts';

export type Fail = (rule: string, node: Node | null, reason: string, mend: string) => void;

/** The parsed tree, walked by path. */
export class Nodes {
  readonly top: unknown;
  readonly raw: string;
  aliased = false;
  constructor(top: unknown, raw: string) {
    this.top = top;
    this.raw = raw;
  }

  /** Plain values: scalars as written, an empty value as if left out, each map inside a list with its place. */
  plain(node: unknown, depth: number, placeOf: (offset: number) => Place, fail: Fail): unknown {
    if (isAlias(node)) {
      // One sentence for the file: a tree of aliases would otherwise fill the screen.
      if (!this.aliased) {
        fail(
          'front-matter',
          node,
          `Unexpected \`*${node.source}\`: a value can’t stand in for another here.`,
          'Write the value out where it is meant.',
        );
      }
      this.aliased = true;
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
      if (node.flow && (value === null || (isScalar(value) && value.value === null))) {
        fail(
          'front-matter',
          key as Node,
          `\`${name}\` stands alone between \`{\` and \`}\`: a comma there ends a value.`,
          'Put quotes round an amount or a text with a comma: `"1,084.50"`; or take the key out.',
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
    return short(
      this.raw
        .slice(from, to)
        .replace(/[ \t\r\n]+/g, ' ')
        .replaceAll('`', '\u02bc')
        .trim(),
    );
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
