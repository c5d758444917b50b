// Rows of pictures of even height, worked out before anything is drawn: a browser that knows each picture's share of
// its row moves nothing when the pictures come in.

/** A column of pictures: its width, the gap between two, and the height that a row should have, all in rem. */
export type Column = { width: number; gap: number; height: number };

/** The column of a page on a desk, as the style sheet has it; on a narrower one all shrinks alike. */
export const DESK: Column = { width: 58, gap: 1, height: 15 };

/**
 * A row and its height on the desk, in rem. Each picture has a frame, given as width over height. The frames of a row
 * fill the column, but those of the last may leave it empty at the right: `rest` is then the frame of what is empty.
 */
export type Row<Item> = { framed: { item: Item; frame: number }[]; height: number; rest: number };

/**
 * Lays pictures out in their order, so that the rows are together as near the wanted height as they can be. The last
 * row is filled only when that makes it no higher than others may be.
 */
export function rowsOf<Item extends { ratio: number }>(
  items: readonly Item[],
  column: Column = DESK,
): Row<Item>[] {
  const framed = items.map((item) => ({ item, frame: frameOf(item.ratio) }));
  const starts = bestStarts(
    framed.map(({ frame }) => frame),
    column,
  );
  const rows = starts.map((start, i) => {
    const own = framed.slice(start, starts[i + 1]);
    return { framed: own, height: filled(sum(own.map(({ frame }) => frame)), own.length, column), rest: 0 };
  });
  const full = rows.map(({ height }) => height).filter((height) => height <= column.height * HIGHEST);
  const middle = full.toSorted((a, b) => a - b)[Math.floor((full.length - 1) / 2)] ?? column.height;
  return rows.map((row) => (full.includes(row.height) ? row : shortened(row, middle, column)));
}

/** The frame of a picture in a row: its own shape, unless it is so tall or so wide that it would upset the row. */
export function frameOf(ratio: number): number {
  return Math.min(Math.max(ratio, TALLEST), WIDEST);
}

const TALLEST = 0.6;
const WIDEST = 3;
/** How far a full row may be from the wanted height. Frames between the bounds above can always be laid within. */
const HIGHEST = 1.15;
const LOWEST = 0.5;
/** What an empty end of the last row counts for beside a row of another height. */
const EMPTY = 0.1;

type Break = { start: number; cost: number };

/** Where the rows begin: the cheapest way to each picture, from the cheapest ways to those before it. */
function bestStarts(frames: readonly number[], column: Column): number[] {
  const ways: Break[] = [{ start: 0, cost: 0 }];
  for (let end = 1; end <= frames.length; end++) {
    let best: Break = { start: 0, cost: Number.POSITIVE_INFINITY };
    let width = 0;
    for (let start = end - 1; start >= 0; start--) {
      width += frames[start] ?? 0;
      const cost = (ways[start]?.cost ?? 0) + costOf(width, end - start, end === frames.length, column);
      if (cost < best.cost) best = { start, cost };
    }
    ways.push(best);
  }
  const starts: number[] = [];
  for (let end = frames.length; end > 0; end = ways[end]?.start ?? 0) starts.unshift(ways[end]?.start ?? 0);
  return starts;
}

function costOf(frames: number, count: number, last: boolean, column: Column): number {
  const off = filled(frames, count, column) / column.height;
  if (off >= LOWEST && off <= HIGHEST) return (off - 1) ** 2;
  if (!last || off < LOWEST) return Number.POSITIVE_INFINITY;
  return EMPTY * (1 - 1 / off) ** 2;
}

/** The height at which frames fill the column. */
function filled(frames: number, count: number, { width, gap }: Column): number {
  return (width - gap * (count - 1)) / frames;
}

/** The last row at the height of the others. No gap stands before what is empty. */
function shortened<Item>({ framed }: Row<Item>, height: number, { width, gap }: Column): Row<Item> {
  const frames = sum(framed.map(({ frame }) => frame));
  return { framed, height, rest: (width - gap * (framed.length - 1)) / height - frames };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
