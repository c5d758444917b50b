// Changes one key of a set: its value alone where it is there, else a line of its own where the schema’s order has it.
import { isCollection, isSeq, type Node, type Pair, type YAMLMap } from 'yaml';
import type { Keys, Value } from './edit.ts';
import { keyOrder, type Shape, within } from './key-order.ts';
import { isEmpty, keyOf, pairOf, type Splice, type Written } from './splice.ts';
import { behindKey, flowText, keyText, pairText } from './value-text.ts';

/** Gives a key a value. `keys` is what the set holds now, for its kind. */
export function setKey(
  written: Written,
  map: YAMLMap,
  key: string,
  value: Value,
  shape: Shape,
  keys: Keys,
): Splice[] | undefined {
  const pair = pairOf(map, key);
  const inner = within(shape, key, keys);
  if (pair) return inPair(written, map, pair, value, inner);
  const order = keyOrder(shape, { ...keys, [key]: value });
  const place = placeOf(map, key, order);
  if (map.flow) return inBraces(written, map, place, `${keyText(key)}: ${flowText(value, inner)}`);
  const column = written.column(written.pairStart(map.items[0] as Pair));
  const text = pairText(key, value, inner, column, stepOf(written, map, column));
  if (place.after) return [insert(written.below(written.pairEnd(place.after), column), `${text}\n`)];
  if (!place.before) return undefined;
  const at = written.pairStart(place.before);
  if (written.isFirst(at)) return [insert(written.above(written.lineStart(at)), `${text}\n`)];
  return [insert(at, `${text.slice(column)}\n${' '.repeat(column)}`)];
}

/** Takes a key out. The set holds others. */
export function dropKey(written: Written, map: YAMLMap, key: string): Splice[] | undefined {
  const index = map.items.findIndex((pair) => keyOf(pair) === key);
  const pair = map.items[index];
  if (!pair) return undefined;
  const [from, to] = [written.pairStart(pair), written.pairEnd(pair)];
  if (map.flow) return dropBetweenCommas(written, map.items.map(spanOf(written)), index);
  if (written.isFirst(from)) return [cut(written.lineStart(from), written.lineEnd(to))];
  const next = map.items[index + 1];
  if (!next) return undefined;
  // The first key stands behind a dash: the next one moves up there, unless a comment is in its way.
  const moved = written.pairStart(next);
  return [cut(from, written.hasComment(to, moved) ? to : moved)];
}

/** Takes one of the things between commas out, and one comma with it. */
export function dropBetweenCommas(
  written: Written,
  spans: readonly (readonly [from: number, to: number])[],
  index: number,
): Splice[] | undefined {
  const [own, before, after] = [spans[index], spans[index - 1], spans[index + 1]];
  if (!own) return undefined;
  const [from, to] = own;
  if (after && !written.hasComment(to, after[0])) return [cut(from, after[0])];
  if (before && !after && !written.hasComment(before[1], from)) return [cut(before[1], to)];
  const comma = after ? written.text.indexOf(',', to) : written.text.lastIndexOf(',', from);
  if (comma < 0 || written.hasComment(Math.min(comma, to), Math.max(comma, from))) return undefined;
  return [cut(from, to), cut(comma, comma + 1)];
}

const spanOf = (written: Written) => (pair: Pair) =>
  [written.pairStart(pair), written.pairEnd(pair)] as const;

const insert = (at: number, text: string): Splice => ({ from: at, to: at, text });
const cut = (from: number, to: number): Splice => ({ from, to, text: '' });

/** The value of a pair, exchanged. */
function inPair(
  written: Written,
  map: YAMLMap,
  pair: Pair,
  value: Value,
  shape: Shape,
): Splice[] | undefined {
  const colon = written.colon(pair);
  if (colon < 0) return undefined;
  const end = written.pairEnd(pair);
  if (map.flow) {
    if (isEmpty(pair.value)) return undefined;
    return [{ from: written.start(pair.value as Node), to: end, text: flowText(value, shape) }];
  }
  const column = written.column(written.pairStart(pair));
  const text = behindKey(value, shape, column, column + keyOf(pair).length + 1, stepOf(written, map, column));
  const inLine = !text.startsWith('\n');
  if (isEmpty(pair.value)) {
    if (inLine) return [insert(colon + 1, text)];
    return [insert(written.lineEnd(colon), `${text.slice(1)}\n`)];
  }
  const [from, node] = [written.start(pair.value as Node), pair.value as Node];
  const wasInLine = !(isCollection(node) && !node.flow);
  if (inLine && wasInLine) return [{ from, to: end, text: text.slice(1) }];
  return [{ from: colon + 1, to: end, text }];
}

function inBraces(
  written: Written,
  map: YAMLMap,
  { after, before }: Place,
  text: string,
): Splice[] | undefined {
  if (after) return [insert(written.pairEnd(after), `, ${text}`)];
  if (before) return [insert(written.pairStart(before), `${text}, `)];
  return map.items.length === 0
    ? [{ from: written.start(map), to: written.end(map), text: `{ ${text} }` }]
    : undefined;
}

type Place = { after?: Pair | undefined; before?: Pair | undefined };

/** The key goes behind the nearest that comes before it in the order, else before the nearest that follows, else last. */
function placeOf(map: YAMLMap, key: string, order: readonly string[]): Place {
  const rank = order.indexOf(key);
  const ranked = map.items
    .map((pair) => ({ pair, at: order.indexOf(keyOf(pair)) }))
    .filter(({ at }) => at >= 0);
  if (rank < 0) return { after: map.items.at(-1) };
  const before = ranked.filter(({ at }) => at < rank).sort((a, b) => b.at - a.at)[0];
  if (before) return { after: before.pair };
  const after = ranked.sort((a, b) => a.at - b.at)[0];
  return after ? { before: after.pair } : { after: map.items.at(-1) };
}

/** How far the lists of this set are set in: as those that are there. */
function stepOf(written: Written, map: YAMLMap, column: number): number {
  for (const { value } of map.items) {
    if (isSeq(value) && !value.flow && value.items.length > 0) {
      return Math.max(0, written.dashColumn(value) - column);
    }
  }
  return 2;
}
