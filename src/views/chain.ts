// The chain of unfinished lines as a drawing to scale: a bar for each, below those that it waits for.
import type { CarRecord } from '../record/record.ts';
import type { LineInOrder, OrderOfWork } from '../rollup/order-of-work.ts';
import { inChains } from './chain-rows.ts';
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

/** From the end of a bar down to the start of one that waits for it. */
export type ChainLink = { path: string; top: number; bottom: number; longest: boolean };

/** The drawing, cut into bands that stand one under the other without a gap, so that paper can break between. */
export type Chain = {
  width: number;
  bands: { top: number; height: number; rows: ChainRow[]; links: ChainLink[] }[];
  ticks: { x: number; text: string }[];
};

const ROW = 38;
const TOP = 46;
/** From the top of a row's words to its bar. */
const WORDS = 22;
/** Height of a bar. */
export const BAR = 12;
/** Rows of a band. */
const BAND = 10;
/** Room at the right for the hours of a bar that ends there. */
const RIGHT = 64;
/** Width of a letter at the size of the labels, at the most in the mean of our words. */
const LETTER = 6.2;

/** Only lines that wait or are waited for are drawn; nothing where there are none. */
export function chainOf(order: OrderOfWork, record: CarRecord, width: number): Chain | undefined {
  const lines = inChains(order.lines);
  const minutes = Math.max(0, ...lines.map(({ way }) => way.to));
  if (lines.length === 0 || minutes === 0) return undefined;
  const { step, count } = ticksFor(minutes, width);
  const x = (at: number) => Math.round((1 + (at / (count * step)) * (width - RIGHT - 1)) * 10) / 10;
  const longest = new Set(order.longest.lines);
  const names = namesOf(record);
  const rows = lines.map((each, i): ChainRow => {
    const [from, to] = [x(each.way.from), x(each.way.to)];
    return {
      name: each.name,
      label: labelAt(`${names.part(each.part)}: ${each.line.do}`, from, width),
      y: TOP + i * ROW,
      x: from,
      width: Math.max(2, to - from),
      longest: longest.has(each.name),
      hours: { text: leftText(each) || 'no hours', x: Math.max(from + 2, to) + 6 },
    };
  });
  return {
    width,
    bands: bandsOf(rows, linksOf(lines, rows, order.longest.lines)),
    ticks: Array.from({ length: count + 1 }, (_, i) => ({ x: x(i * step), text: String((i * step) / 60) })),
  };
}

function bandsOf(rows: readonly ChainRow[], links: readonly ChainLink[]): Chain['bands'] {
  return Array.from({ length: Math.ceil(rows.length / BAND) }, (_, i) => {
    const own = rows.slice(i * BAND, (i + 1) * BAND);
    const top = i === 0 ? 0 : TOP + i * BAND * ROW - WORDS;
    const bottom = TOP + (i * BAND + own.length) * ROW - WORDS;
    return {
      top,
      height: bottom - top,
      rows: own,
      links: links.filter((link) => link.top < bottom && link.bottom > top),
    };
  });
}

function linksOf(
  lines: readonly LineInOrder[],
  rows: readonly ChainRow[],
  longest: readonly string[],
): ChainLink[] {
  const at = new Map(rows.map((row) => [row.name, row]));
  const before = new Map(longest.slice(1).map((name, i) => [name, longest[i]]));
  return lines.flatMap(({ name, waits }) =>
    waits.flatMap((each) => {
      const [to, from] = [at.get(name), each.for === 'work' ? at.get(each.line) : undefined];
      if (!to || !from || each.for !== 'work') return [];
      const end = Math.round((from.x + from.width) * 10) / 10;
      const [top, middle] = [from.y + BAR, to.y + BAR / 2];
      const path = to.x > end + 1 ? `M${end} ${top}V${middle}H${to.x}` : `M${end} ${top}V${to.y}`;
      return [{ path, top, bottom: middle, longest: before.get(name) === each.line }];
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
