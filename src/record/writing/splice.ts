// Where things stand in the text of front matter, and the smallest pieces by which it is changed.
import { isCollection, isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap, type YAMLSeq } from 'yaml';

/** A piece of text put in place of what stands from one offset to another. */
export type Splice = { from: number; to: number; text: string };

/** The text with all pieces put in. They don’t overlap. */
export function spliced(text: string, splices: readonly Splice[]): string {
  return splices
    .toSorted((a, b) => b.from - a.from)
    .reduce((whole, { from, to, text: piece }) => whole.slice(0, from) + piece + whole.slice(to), text);
}

/** The written tree of front matter, with what is asked of it to change it. */
export class Written {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }

  /** How far the offset is set in on its line. */
  column(at: number): number {
    return at - (this.text.lastIndexOf('\n', at - 1) + 1);
  }
  lineStart(at: number): number {
    return at - this.column(at);
  }
  /** The start of the next line, or the end of the text. */
  lineEnd(at: number): number {
    return this.text.indexOf('\n', at) + 1 || this.text.length;
  }
  /** True when nothing but spaces stands before it on its line. */
  isFirst(at: number): boolean {
    return this.text.slice(this.lineStart(at), at).trim() === '';
  }
  hasComment(from: number, to: number): boolean {
    return this.text.slice(from, to).includes('#');
  }

  start(node: Node): number {
    return node.range?.[0] ?? 0;
  }
  /** The end of a node’s own text, without a comment or line end behind it. */
  end(node: Node): number {
    const [from = 0, to = 0] = node.range ?? [];
    if (!isCollection(node) || node.flow) return from + this.text.slice(from, to).trimEnd().length;
    const last = node.items.at(-1);
    if (isSeq(node)) return last ? this.end(last as Node) : from;
    return last ? this.pairEnd(last as Pair) : from;
  }
  pairStart(pair: Pair): number {
    return this.start(pair.key as Node);
  }
  pairEnd(pair: Pair): number {
    return isEmpty(pair.value) ? this.colon(pair) + 1 : this.end(pair.value as Node);
  }
  /** The offset of the colon behind a key. */
  colon(pair: Pair): number {
    const [, end = 0] = (pair.key as Node).range ?? [];
    return this.text.indexOf(':', end);
  }
  /** The column of the dashes of a list. */
  dashColumn(list: YAMLSeq): number {
    return this.column(this.dash(list, 0));
  }
  /** The offset of an item’s dash. */
  dash(list: YAMLSeq, index: number): number {
    const source = list.srcToken?.type === 'block-seq' ? list.srcToken.items[index] : undefined;
    const dash = source?.start.find(({ type }) => type === 'seq-item-ind');
    return dash?.offset ?? this.start(list);
  }

  /** The line behind a thing, and behind the comments below it that are set in by more than `column`. */
  below(end: number, column: number): number {
    let at = this.lineEnd(end);
    for (;;) {
      const found = /^( *)#.*(?:\n|$)/.exec(this.text.slice(at));
      if (!found || (found[1] ?? '').length <= column) return at;
      at += found[0].length;
    }
  }
  /** The first of the comment lines that stand right above a line, or the line itself. */
  above(lineStart: number): number {
    let at = lineStart;
    for (;;) {
      const before = this.lineStart(Math.max(0, at - 1));
      if (at === 0 || !/^ *#/.test(this.text.slice(before, at))) return at;
      at = before;
    }
  }
}

export const isEmpty = (value: unknown): boolean =>
  value === null || value === undefined || (isScalar(value) && value.value === null);

export const pairOf = (map: YAMLMap, key: string): Pair | undefined =>
  map.items.find((pair) => isScalar(pair.key) && String(pair.key.source ?? pair.key.value) === key);

export const keyOf = (pair: Pair): string =>
  isScalar(pair.key) ? String(pair.key.source ?? pair.key.value) : '';

/** The node at a path: a set, a list or a value. */
export function nodeAt(top: unknown, path: readonly (string | number)[]): unknown {
  let at = top;
  for (const step of path) {
    if (isMap(at)) at = pairOf(at, String(step))?.value;
    else if (isSeq(at)) at = at.items[Number(step)];
    else return undefined;
  }
  return at;
}
