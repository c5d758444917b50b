// The order of work: what can be done now, what waits and for what, and the longest way through what is left.
import { plannedLines } from '../record/checks/planned-lines.ts';
import { type CarRecord, type Choice, lineName, type PlannedLine, settledBy } from '../record/record.ts';
import type { Rollup } from './cost-lines.ts';
import { longestWay, type Way } from './longest-way.ts';

/** What an unfinished line waits for. `outside` is an order of work done elsewhere, `word` an open choice. */
export type WaitsFor =
  | { for: 'work'; line: string }
  | { for: 'delivery' | 'outside'; order: OpenOrder }
  | { for: 'word'; choice: string };

/** An unfinished planned line. `minutes` are the likely ones left; a line on a circle has no way. */
export type LineInOrder = {
  name: string;
  part: string;
  line: PlannedLine;
  state: 'now' | 'waits';
  begun: boolean;
  waits: WaitsFor[];
  minutes: number;
  way: Way | undefined;
};

/** Unfinished lines as the record lists them, the longest way in minutes, and orders that hold up no line. */
export type OrderOfWork = {
  lines: LineInOrder[];
  longest: { lines: string[]; minutes: number };
  otherOrders: OpenOrder[];
};

export type OpenOrder = Rollup['openOrders'][number];

/** The order of the unfinished lines; of order lines + links. */
export function orderOfWork(record: CarRecord, rollup: Rollup): OrderOfWork {
  const planned = plannedLines(record);
  const so = (name: string) => rollup.planned[name];
  const open = [...planned].filter(([name]) => so(name)?.finished === undefined);
  const isOpen = new Set(open.map(([name]) => name));
  const words = openWords(record);
  const orders = Map.groupBy(rollup.openOrders, ({ line, part }) => line ?? part);
  const holding = new Set<OpenOrder>();
  const links = open.map(([name, { part, line }]) => ({
    name,
    minutes: minutesLeft(line, so(name)),
    after: [...new Set((line.after ?? []).map((after) => lineName(after, part.id)))].filter((after) =>
      isOpen.has(after),
    ),
  }));
  const { ways, longest } = longestWay(links);
  const lines = open.map(([name, { part, line }], i): LineInOrder => {
    const begun = so(name)?.begun ?? false;
    // An order that names no line holds up what isn't begun of its part: what is in hand goes on without it.
    const ordered = [...(orders.get(name) ?? []), ...(begun ? [] : (orders.get(part.id) ?? []))];
    for (const order of ordered) holding.add(order);
    const waits: WaitsFor[] = [
      ...[name, part.id]
        .flatMap((of) => words.get(of) ?? [])
        .map((choice) => ({ for: 'word' as const, choice })),
      ...ordered.map((order) => ({ for: kindOf(order, line, record.choices), order })),
      ...(links[i]?.after ?? []).map((after) => ({ for: 'work' as const, line: after })),
    ];
    return {
      name,
      part: part.id,
      line,
      state: waits.length === 0 ? 'now' : 'waits',
      begun,
      waits,
      minutes: links[i]?.minutes ?? 0,
      way: ways.get(name),
    };
  });
  return {
    lines,
    longest: { lines: longest, minutes: ways.get(longest.at(-1) ?? '')?.to ?? 0 },
    otherOrders: rollup.openOrders.filter((order) => !holding.has(order)),
  };
}

/** What the writer last thought left, else what was likely less what is worked, never below nothing. */
function minutesLeft({ hours }: PlannedLine, so: Rollup['planned'][string] | undefined): number {
  return so?.left?.hours?.range.likely ?? Math.max(0, (hours?.likely ?? 0) - (so?.minutes ?? 0));
}

/** Open choices by the lines that they settle, or by their parts where they name no line. */
function openWords({ choices }: CarRecord): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const choice of choices) {
    const { id, decided, withdrawn, settles, part } = choice;
    if (decided || withdrawn) continue;
    for (const name of settles ? settledBy(choice) : part) {
      found.set(name, [...(found.get(name) ?? []), id]);
    }
  }
  return found;
}

/** An order is of outside work when its line, or the option that was taken, foresees that and nothing to buy. */
function kindOf(
  order: OpenOrder,
  { outside, spend }: PlannedLine,
  choices: Choice[],
): 'delivery' | 'outside' {
  const choice = choices.find(({ id }) => id === order.choice);
  const taken = choice?.options.find(({ option }) => option === choice.decided?.option);
  const lines = taken?.lines ?? [{ outside, spend, buy: undefined }];
  const foreseen = lines.some((line) => line.outside) && !lines.some((line) => line.buy ?? line.spend);
  return foreseen ? 'outside' : 'delivery';
}
