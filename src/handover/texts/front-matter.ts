// Front matter made shorter: keys that aren't kept go, every comment goes, and what stays is written as it was, in its
// order.
import matter from 'gray-matter';
import {
  isAlias,
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  Scalar,
  visit,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';

type Values = Record<string, unknown>;

/**
 * The YAML of a text with `kept` alone in it. `kept` are values as splitFrontMatter gives them, each line of a list
 * with its place; a value that differs from the written one is put in its place.
 */
export function reducedFrontMatter(text: string, kept: Values): string {
  let yaml = '';
  const keep = (raw: string) => {
    yaml = raw;
    return {};
  };
  matter(text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n'), { engines: { yaml: keep } });
  const lines = new LineCounter();
  // Every scalar is a text, so that each is written as it stood: 007 stays 007.
  const doc = parseDocument(yaml, { schema: 'failsafe', lineCounter: lines, logLevel: 'silent' });
  if (!isMap(doc.contents)) return '';
  reduce(doc.contents, kept, (node) => lines.linePos(node.range?.[0] ?? 0));
  doc.comment = null;
  doc.commentBefore = null;
  visit(doc, {
    Node: (_, node) => {
      node.comment = null;
      node.commentBefore = null;
      // A name for a value that nothing may point to here is a remark too.
      if (!isAlias(node)) delete node.anchor;
    },
  });
  return doc.contents.items.length > 0 ? doc.toString({ lineWidth: 0 }) : '';
}

/** Where a node begins, counted from the line after the first three hyphens. */
type At = (node: Node) => { line: number; col: number };

function reduce(map: YAMLMap, kept: Values, at: At): void {
  map.items = map.items.filter(({ key }) => nameOf(key) in kept);
  for (const pair of map.items) pair.value = reduced(pair.value, kept[nameOf(pair.key)], at);
  for (const [key, value] of Object.entries(kept)) {
    if (key !== 'place' && !map.items.some((pair) => nameOf(pair.key) === key)) map.set(key, value);
  }
}

function reduced(node: unknown, kept: unknown, at: At): unknown {
  if (typeof kept === 'string') return isScalar(node) && node.value === kept ? node : scalarOf(kept, node);
  if (isMap(node)) reduce(node, kept as Values, at);
  else if (isSeq(node)) reduceList(node, kept as unknown[], at);
  return node;
}

/** Lines of a list are found by their places; words by their order, since all of them stay. */
function reduceList(list: YAMLSeq, kept: readonly unknown[], at: At): void {
  const lines = list.items.filter(isMap);
  if (lines.length === 0) {
    list.items = list.items.map((item, i) => reduced(item, kept[i], at));
    return;
  }
  list.items = kept.map((value) => {
    const { place } = value as { place: { line: number; column: number } };
    const found = lines.find((line) => {
      const { line: number, col } = at(line);
      return number === place.line && (number === 1 ? col + 3 : col) === place.column;
    });
    if (!found) throw new Error(`No line is written at ${place.line}:${place.column}.`);
    reduce(found, value as Values, at);
    return found;
  });
}

/** A written value in the hand of the one that it stands for: quoted where that was. */
function scalarOf(value: string, before: unknown): Scalar {
  const scalar = new Scalar(value);
  if (isScalar(before) && before.type !== undefined) scalar.type = before.type;
  return scalar;
}

const nameOf = (key: unknown): string => (isScalar(key) ? String(key.value) : isNode(key) ? '' : String(key));
