// What a choice sheet knows of its choice: enough to work it out again when a reader moves a figure.
import type { Choice } from '../../estimate/uncertain/choice/choice.ts';
import type { Currency } from '../../figures/currency.ts';

/** Plain data, so that a page can carry it. Money in minor units, hours in hours, chances from 0 to 1. */
export type Sheet = {
  currency: Currency;
  seed: string;
  sums: Choice;
  /** Heading of each option. */
  names: { [option: string]: string };
  /** What each driver is, in the writer's words: `Planish the crown`, `an hour`. */
  labels: { [driver: string]: string };
  /** The one thing that an option buys: `Reproduction fender with freight`; no entry where it is several. */
  bought: { [option: string]: string };
};

/** The heading up to its first comma, for sentences, where that still tells the options apart. */
export function shortName({ names }: Sheet, option: string): string {
  const short = (name: string) => name.split(',')[0] as string;
  const own = names[option] ?? option;
  const alike = Object.values(names).filter((name) => short(name) === short(own));
  return alike.length > 1 ? own : short(own);
}
