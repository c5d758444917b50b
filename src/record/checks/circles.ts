// Finds circles in what waits for what.

/** Every circle once, each as the names on it in order, begun at the one that comes first in `next`. */
export function circles(next: ReadonlyMap<string, readonly string[]>): string[][] {
  const found: string[][] = [];
  const done = new Set<string>();
  for (const start of next.keys()) {
    // A stack of its own instead of recursion: a plan may be thousands of lines deep.
    const path: string[] = [];
    const onPath = new Map<string, number>();
    const open: { name: string; step: number }[] = [];
    const enter = (name: string) => {
      onPath.set(name, path.length);
      path.push(name);
      open.push({ name, step: 0 });
    };
    if (!done.has(start)) enter(start);
    for (let top = open.at(-1); top; top = open.at(-1)) {
      const following = next.get(top.name)?.[top.step++];
      if (following === undefined) {
        done.add(top.name);
        onPath.delete(top.name);
        path.pop();
        open.pop();
        continue;
      }
      const since = onPath.get(following);
      if (since !== undefined) found.push(path.slice(since));
      else if (!done.has(following) && next.has(following)) enter(following);
    }
  }
  return found;
}

/** `` `a` → `b` → `a` ``. */
export function circleText(circle: readonly string[]): string {
  return [...circle, circle[0] ?? ''].map((name) => `\`${name}\``).join(' → ');
}
