// What is left, by what holds it up.
import type { OrderOfWork, WaitsFor } from '../order-of-work.ts';
import type { Forecast } from './forecast.ts';

/** `hours` are those expected to be left. */
export type Holds = { for: 'now' | WaitsFor['for']; lines: string[]; hours: number };

/**
 * Every unfinished line once, under what it has to wait for first of all: the owner's word before other work, and that
 * before a delivery. What can be done now stands first. Hours of a choice stand with the lines that it settles.
 */
export function heldUp({ lines, choices }: Forecast, order: OrderOfWork): Holds[] {
  const hours = new Map(lines.map(({ id, hours: { mean } }) => [id, mean]));
  for (const { lines: settled, hours: of } of choices) {
    for (const [i, name] of settled.entries()) hours.set(name, i === 0 ? of.mean : 0);
  }
  return KINDS.flatMap((kind) => {
    const held = order.lines.filter(
      ({ waits }) =>
        (KINDS.find((each) => waits.some(({ for: reason }) => reason === each)) ?? 'now') === kind,
    );
    const sum = held.reduce((total, { name }) => total + (hours.get(name) ?? 0), 0);
    return held.length > 0 ? [{ for: kind, lines: held.map(({ name }) => name), hours: sum }] : [];
  });
}

const KINDS = ['now', 'word', 'work', 'delivery', 'outside'] as const;
