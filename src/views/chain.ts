// The chain of unfinished lines as a drawing to scale: a bar for each, after those that it waits for.
import type { CarRecord } from '../record/record.ts';
import type { LineInOrder, OrderOfWork } from '../rollup/order-of-work.ts';
import { namesOf } from './names.ts';
import { leftText } from './order.ts';

/** A bar with its words above it and its hours behind it; `y` is the bar's upper edge. */
export type ChainRow = {
  name: string;
  label: { text: string; x: number };
  y: number;
  x: number;
  width: number;
  longest: boolean;
  hours: { text: string; x: number };
};

/** The drawing in units of its own; `links` are paths from the end of a bar to the start of one that waits. */
export type Chain = {
  width: number;
  height: number;
  rows: ChainRow[];
  links: { path: string; longest: boolean }[];
  ticks: { x: number; text: string }[];
};

const ROW = 44;
const TOP = 46;
/** Height of a bar. */
export const BAR = 12;
/** Room at the right for the hours of a bar that ends there. */
const RIGHT = 64;
/** Width of a letter at the size of the labels, at the most in the mean of our words. */
const LETTER = 6.2;

/** Only lines that wait or are waited for are drawn; nothing where there are none. */
export function chainOf(order: OrderOfWork, record: CarRecord, width: number): Chain | undefined {
  const lines = chained(order.lines);
  const minutes = Math.max(0, ...lines.map(({ way }) => way?.to ?? 0));
  if (lines.length === 0 || minutes === 0) return undefined;
  const { step, count } = ticksFor(minutes, width);
  const x = (at: number) => Math.round((1 + (at / (count * step)) * (width - RIGHT - 1)) * 10) / 10;
  const longest = new Set(order.longest.lines);
  const names = namesOf(record);
  const rows = lines.map(({ name, part, line, way = { from: 0, to: 0 } }, i): ChainRow => {
    const of = lines[i] as LineInOrder;
    const [from, to] = [x(way.from), x(way.to)];
    return {
      name,
      label: labelAt(`${names.part(part)}: ${line.do}`, from, width),
      y: TOP + i * ROW,
      x: from,
      width: Math.max(2, to - from),
      longest: longest.has(name),
      hours: { text: leftText(of) || 'no hours', x: Math.max(from + 2, to) + 6 },
    };
  });
  return {
    width,
    height: TOP + (lines.length - 1) * ROW + BAR + 6,
    rows,
    links: linksOf(lines, rows, order.longest.lines),
    ticks: Array.from({ length: count + 1 }, (_, i) => ({ x: x(i * step), text: String((i * step) / 60) })),
  };
}

/** Chains one under the other, the longest first; within a chain by start, then by name. */
function chained(lines: readonly LineInOrder[]): LineInOrder[] {
  const drawn = lines.filter(({ way }) => way !== undefined);
  const head = new Map(drawn.map(({ name }) => [name, name]));
  const headOf = (name: string): string => {
    let at = name;
    for (let up = head.get(at); up !== undefined && up !== at; up = head.get(at)) at = up;
    head.set(name, at);
    return at;
  };
  for (const { name, waits } of drawn) {
    for (const each of waits) {
      if (each.for === 'work' && head.has(each.line)) head.set(headOf(name), headOf(each.line));
    }
  }
  const groups = [...Map.groupBy(drawn, ({ name }) => headOf(name)).values()].filter(
    ({ length }) => length > 1,
  );
  const end = (group: readonly LineInOrder[]) => Math.max(...group.map(({ way }) => way?.to ?? 0));
  const from = ({ way }: LineInOrder) => way?.from ?? 0;
  return groups
    .toSorted((a, b) => end(b) - end(a) || ((a[0]?.name ?? '') < (b[0]?.name ?? '') ? -1 : 1))
    .flatMap((group) =>
      group.toSorted(
        (a, b) => from(a) - from(b) || (a.way?.to ?? 0) - (b.way?.to ?? 0) || (a.name < b.name ? -1 : 1),
      ),
    );
}

function linksOf(
  lines: readonly LineInOrder[],
  rows: readonly ChainRow[],
  longest: readonly string[],
): Chain['links'] {
  const at = new Map(rows.map((row) => [row.name, row]));
  const before = new Map(longest.slice(1).map((name, i) => [name, longest[i]]));
  return lines.flatMap(({ name, waits }) =>
    waits.flatMap((each) => {
      const [to, from] = [at.get(name), each.for === 'work' ? at.get(each.line) : undefined];
      if (!to || !from || each.for !== 'work') return [];
      const end = from.x + from.width;
      const [fromY, toY] = [from.y + BAR, to.y + BAR / 2];
      const path = to.x > end ? `M${end} ${from.y + BAR / 2}V${toY}H${to.x}` : `M${end} ${fromY}V${to.y}`;
      return [{ path, longest: before.get(name) === each.line }];
    }),
  );
}

/** Hours between ticks, so that their figures don't touch. In minutes. */
function ticksFor(minutes: number, width: number): { step: number; count: number } {
  const most = Math.max(3, Math.floor(width / 60));
  const step =
    (STEPS.find((hours) => Math.ceil(minutes / 60 / hours) <= most) ?? Math.ceil(minutes / 60 / most)) * 60;
  return { step, count: Math.ceil(minutes / step) };
}

const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** The words over a bar: from its start or, where room lacks, further left, and no more of them than have room. */
function labelAt(text: string, from: number, width: number): ChainRow['label'] {
  const letters = Math.floor(width / LETTER);
  const short = text.length <= letters ? text : `${text.slice(0, letters - 1).replace(/[\s,;:]+\S*$/, '')} …`;
  const x = from <= 1 ? 0 : from + 6;
  return { text: short, x: Math.round(Math.max(0, Math.min(x, width - short.length * LETTER))) };
}
