// The longest way through lines that wait for each other: what the order of work takes at the least.

/** Minutes from the start of all work to the start and the end of a line, if nothing but other lines holds it up. */
export type Way = { from: number; to: number };

/** A line, what is left of it in minutes, and the lines that must be finished first. */
export type Link = { name: string; minutes: number; after: readonly string[] };

/**
 * The way of every line, and the lines on the longest of all in order. A line on a circle or behind one has no
 * way. Of two ways of one length, the one whose lines come first by name, whatever order the links come in.
 */
export function longestWay(links: readonly Link[]): { ways: Map<string, Way>; longest: string[] } {
  const { order, minutes, before } = inOrder(links);
  const ways = new Map<string, Way>();
  const through = new Map<string, string>();
  for (const name of order) {
    const last = furthest(before.get(name) ?? [], ways);
    const from = last === undefined ? 0 : (ways.get(last)?.to ?? 0);
    ways.set(name, { from, to: from + (minutes.get(name) ?? 0) });
    if (last !== undefined) through.set(name, last);
  }
  const longest: string[] = [];
  for (let name = furthest(order, ways); name !== undefined; name = through.get(name)) longest.push(name);
  return { ways, longest: longest.reverse() };
}

/** The lines so that each comes after those it waits for. What isn't among the links holds nothing up. */
function inOrder(links: readonly Link[]) {
  const minutes = new Map(links.map((link) => [link.name, link.minutes]));
  const before = new Map(
    links.map(({ name, after }) => [name, [...new Set(after)].filter((other) => minutes.has(other))]),
  );
  const following = new Map<string, string[]>();
  for (const [name, others] of before) {
    for (const other of others) {
      const list = following.get(other) ?? [];
      list.push(name);
      following.set(other, list);
    }
  }
  const open = new Map([...before].map(([name, others]) => [name, others.length]));
  const order = [...before.keys()].filter((name) => open.get(name) === 0);
  // The list grows while it is walked.
  for (const name of order) {
    for (const next of following.get(name) ?? []) {
      const left = (open.get(next) ?? 0) - 1;
      open.set(next, left);
      if (left === 0) order.push(next);
    }
  }
  return { order, minutes, before };
}

function furthest(names: readonly string[], ways: ReadonlyMap<string, Way>): string | undefined {
  let best: string | undefined;
  for (const name of names) {
    const more = best === undefined ? 1 : (ways.get(name)?.to ?? 0) - (ways.get(best)?.to ?? 0);
    if (more > 0 || (more === 0 && best !== undefined && name < best)) best = name;
  }
  return best;
}
