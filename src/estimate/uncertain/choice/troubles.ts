// What makes a choice impossible to compare, as values: the writer is told, nothing is thrown.
import { type Choice, chainOf, driversOf, type Option, type Plan, planOf } from './choice.ts';

export type Trouble =
  /** Each fails into the next, and the last into the first; it starts at the first by name. */
  | { kind: 'circle'; options: string[] }
  | { kind: 'named-twice'; name: string }
  | { kind: 'no-options' }
  | { kind: 'unknown-option'; option: string; next: string }
  | { kind: 'unknown-driver'; option: string; driver: string }
  /** An amount that is no hours or price, a multiplier that is no rate or share, a chance that is none. */
  | { kind: 'wrong-kind'; option: string; driver: string }
  /** A driver that stands twice in one product. */
  | { kind: 'driver-twice'; option: string; driver: string }
  /** One uncertain chance met twice on the way from this option: its mean would not be the whole story. */
  | { kind: 'chance-twice'; option: string; driver: string }
  | { kind: 'out-of-range'; name: string };

/** All troubles at once, in the order of the options; empty when the choice can be compared. */
export function troublesIn(choice: Choice): Trouble[] {
  const plan = planOf(choice);
  const troubles: Trouble[] = [
    ...twice(choice.drivers.map(({ id }) => id)),
    ...twice(choice.options.map(({ id }) => id)),
    ...rangeTroubles(choice),
    ...choice.options.flatMap((option) => optionTroubles(plan, option)),
    ...plan.groups.flatMap(({ id, drivers }) =>
      drivers
        .filter((driver) => !plan.drivers.has(driver))
        .map((driver): Trouble => ({ kind: 'unknown-driver', option: id, driver })),
    ),
    ...circlesIn(plan),
  ];
  if (choice.options.length === 0) troubles.push({ kind: 'no-options' });
  if (troubles.length > 0) return troubles;
  return choice.options.flatMap((option) => repeatedChances(plan, option));
}

function twice(names: string[]): Trouble[] {
  const again = names.filter((name, i) => names.indexOf(name) !== i);
  return [...new Set(again)].map((name) => ({ kind: 'named-twice', name }));
}

function rangeTroubles({ drivers, options }: Choice): Trouble[] {
  const bad = drivers
    .filter(({ kind, range: { low, likely, high } }) => {
      const ordered = low <= likely && likely <= high && high - low < Infinity;
      return !ordered || (kind === 'chance' && (low < 0 || high > 1));
    })
    .map(({ id }) => id);
  for (const { id, canFail, wait } of options) {
    if (canFail && !(canFail.after >= 0 && canFail.after <= 1)) bad.push(id);
    else if (wait && !(wait.low <= wait.likely && wait.likely <= wait.high)) bad.push(id);
  }
  return bad.map((name) => ({ kind: 'out-of-range', name }));
}

function optionTroubles({ drivers, options }: Plan, option: Option): Trouble[] {
  const named = [...driversOf(option), ...(option.canFail ? [option.canFail.chance] : [])];
  const troubles: Trouble[] = named
    .filter((driver) => !drivers.has(driver))
    .map((driver) => ({ kind: 'unknown-driver', option: option.id, driver }));
  const expect = (driver: string, ...kinds: string[]) => {
    const kind = drivers.get(driver)?.kind;
    if (kind && !kinds.includes(kind)) troubles.push({ kind: 'wrong-kind', option: option.id, driver });
  };
  for (const { amount, by = [] } of option.terms) {
    expect(amount, 'hours', 'price');
    for (const driver of by) expect(driver, 'rate', 'share');
    for (const driver of by.filter((each, i) => by.indexOf(each) !== i)) {
      troubles.push({ kind: 'driver-twice', option: option.id, driver });
    }
  }
  if (option.canFail) {
    expect(option.canFail.chance, 'chance');
    const { next } = option.canFail;
    if (!options.has(next)) troubles.push({ kind: 'unknown-option', option: option.id, next });
  }
  return troubles;
}

function circlesIn({ options }: Plan): Trouble[] {
  const circles = new Map<string, string[]>();
  for (const start of options.keys()) {
    const way: string[] = [];
    let at: string | undefined = start;
    while (at !== undefined && !way.includes(at)) {
      way.push(at);
      at = options.get(at)?.canFail?.next;
    }
    if (at === undefined) continue;
    const circle = way.slice(way.indexOf(at));
    const first = circle.indexOf([...circle].sort()[0] as string);
    const turned = [...circle.slice(first), ...circle.slice(0, first)];
    circles.set(turned[0] as string, turned);
  }
  return [...circles.values()].map((names) => ({ kind: 'circle', options: names }));
}

function repeatedChances(plan: Plan, option: Option): Trouble[] {
  const chances = chainOf(plan, option.id).flatMap(({ canFail }) => (canFail ? [canFail.chance] : []));
  const again = chances.filter((chance, i) => chances.indexOf(chance) !== i);
  return [...new Set(again)]
    .filter((chance) => {
      const range = plan.drivers.get(chance)?.range;
      return range && range.low !== range.high;
    })
    .map((driver) => ({ kind: 'chance-twice', option: option.id, driver }));
}
