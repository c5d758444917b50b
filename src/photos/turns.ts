// Bounds the work that is done at once: a few pictures side by side, fewer when they are large.
import { availableParallelism } from 'node:os';

/** Pictures at once: one more than there are cores, so that none waits for a disk; the runtime works on four. */
export const AT_ONCE = Math.min(availableParallelism() + 1, Number(process.env.UV_THREADPOOL_SIZE) || 4);

/**
 * Runs `work` on every item, `atOnce` side by side, begun in order. After one that fails none is begun, and those that
 * are under way come to their end before the failure is thrown: nobody works on behind the caller’s back.
 */
export async function eachInTurn<T>(
  items: readonly T[],
  atOnce: number,
  work: (item: T) => Promise<void>,
): Promise<void> {
  const waiting = items.values();
  const failures: unknown[] = [];
  const worker = async () => {
    for (const item of waiting) {
      if (failures.length > 0) return;
      await work(item).catch((error) => failures.push(error));
    }
  };
  await Promise.all(Array.from({ length: Math.min(atOnce, items.length) }, worker));
  if (failures.length > 0) throw failures[0];
}

/** A room of a given size: work waits until its share is free. What is larger than the room waits for all of it. */
export function room(size: number) {
  let free = size;
  const waiting: { share: number; go: () => void }[] = [];
  const next = () => {
    for (let first = waiting[0]; first && first.share <= free; first = waiting[0]) {
      waiting.shift();
      free -= first.share;
      first.go();
    }
  };
  return async <T>(wanted: number, work: () => Promise<T>): Promise<T> => {
    const share = Math.min(wanted, size);
    await new Promise<void>((go) => {
      waiting.push({ share, go });
      next();
    });
    try {
      return await work();
    } finally {
      free += share;
      next();
    }
  };
}
