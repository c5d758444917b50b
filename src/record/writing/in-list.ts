// Changes one line of a list.
import { isMap, type Node, type YAMLSeq } from 'yaml';
import type { Value } from './edit.ts';
import { dropBetweenCommas } from './in-set.ts';
import { type Shape, within } from './key-order.ts';
import type { Splice, Written } from './splice.ts';
import { flowText, itemText } from './value-text.ts';

/** Puts a line at the end of a list, written as its last line is. */
export function addItem(written: Written, list: YAMLSeq, item: Value, shape: Shape): Splice[] | undefined {
  const last = list.items.at(-1) as Node | undefined;
  const inner = within(shape, 0);
  if (list.flow) {
    const at = last ? written.end(last) : written.start(list) + 1;
    return [{ from: at, to: at, text: `${last ? ', ' : ''}${flowText(item, inner)}` }];
  }
  if (!last) return undefined;
  const column = written.dashColumn(list);
  const at = written.below(written.end(last), Math.max(0, column - 1));
  const flow = isMap(last) ? last.flow === true : false;
  return [{ from: at, to: at, text: `${itemText(item, inner, column, flow)}\n` }];
}

/** Puts another value in place of a line. */
export function setItem(
  written: Written,
  list: YAMLSeq,
  index: number,
  item: Value,
  shape: Shape,
): Splice[] | undefined {
  const there = list.items[index] as Node | undefined;
  if (!there?.range) return undefined;
  const [from, to] = [written.start(there), written.end(there)];
  if (list.flow) return [{ from, to, text: flowText(item, within(shape, 0)) }];
  const column = written.column(from) - 2;
  const flow = isMap(there) ? there.flow === true : false;
  return [{ from, to, text: itemText(item, within(shape, 0), column, flow).slice(column + 2) }];
}

/** Takes a line out. The list holds others. */
export function dropItem(written: Written, list: YAMLSeq, index: number): Splice[] | undefined {
  const there = list.items[index] as Node | undefined;
  if (!there?.range) return undefined;
  const spans = list.items.map((item) => [written.start(item as Node), written.end(item as Node)] as const);
  if (list.flow) return dropBetweenCommas(written, spans, index);
  const dash = written.dash(list, index);
  if (!written.isFirst(dash)) return undefined;
  return [{ from: written.lineStart(dash), to: written.lineEnd(written.end(there)), text: '' }];
}
