// The lines that every total is made of: plain data, one line for each thing that costs or is charged.
import type { Day } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import type { Range } from '../figures/ranges.ts';
import type { Place } from '../record/place.ts';

/**
 * What a line is. `bought` and `outside` are the price without freight, tax and handling, which stand as lines
 * of their own; `deposit` comes back; `tax` is charged by the shop to the owner, `paid-tax` by a vendor.
 */
export type CostKind =
  | 'labour'
  | 'bought'
  | 'outside'
  | 'freight'
  | 'paid-tax'
  | 'handling'
  | 'deposit'
  | 'materials'
  | 'tax';

/** One line. Amounts are whole minor units of the record's currency; refunds are negative. */
export type CostLine = {
  kind: CostKind;
  day: Day;
  /** The entry it stands in; nothing for tax that is rounded on the statement's sum. */
  entry?: string;
  part?: string;
  group?: string;
  work?: string;
  person?: string;
  vendor?: string;
  choice?: string;
  /** The planned line, `part/line`. */
  line?: string;
  bill?: string;
  text: string;
  /** Time worked, in minutes; only on labour. */
  minutes?: number;
  /** The time charged, in minutes, and the rate of an hour; only on labour that is charged. */
  timed?: { minutes: number; rate: Minor };
  /** What it costs the shop. */
  cost: Minor;
  /** What the owner is charged. */
  charged: Minor;
  /** Why it isn't charged, as written. */
  noCharge?: string;
  /** Hours within a price fixed beforehand, or that price; `of` is the planned line or the choice that it is for. */
  fixed?: { is: 'hours' | 'price'; of: string };
  /** The owner paid the vendor: listed, charged nothing. */
  paidByOwner?: true;
  /** The bill was silent and the amount follows from a rule. */
  workedOut?: true;
  place: Place;
};

/** A sum with the lines behind it. */
export type Total = { cost: Minor; charged: Minor; minutes: number; lines: CostLine[] };

/** One way to divide all lines. `key` is undefined for what belongs to none (the car as a whole). */
export type Row = Total & { key: string | undefined; label: string; kinds: { [kind in CostKind]?: Total } };
export type Table = { by: Grouping; rows: Row[]; total: Total & { kinds: { [kind in CostKind]?: Total } } };
export type Grouping = 'part' | 'group' | 'work' | 'person' | 'vendor' | 'month' | 'choice' | 'kind';

/** Everything a page or a command may say about the sums of a record. */
export type Rollup = {
  lines: CostLine[];
  tables: { [by in Grouping]: Table };
  total: Total;
  agreed: Minor;
  paid: Minor;
  /** Deposits not yet back, largest first. */
  depositsOut: { text: string; vendor: string; day: Day; amount: Minor; place: Place }[];
  openOrders: {
    what: string;
    vendor: string;
    part?: string;
    /** The planned line that waits for it, `part/line`. */
    line?: string;
    choice?: string;
    ordered: Day;
    expected?: Day;
    price?: Minor;
    place: Place;
  }[];
  /** By month: spent in it, running total charged, and what was agreed by its end. */
  months: { month: string; minutes: number; charged: Minor; running: Minor; agreed: Minor }[];
  /** Planned lines (`part/line`): time and money so far, the day finished, what the writer last thought left. */
  planned: {
    [name: string]: {
      minutes: number;
      charged: Minor;
      finished?: Day;
      begun: boolean;
      /** Hours in minutes, spend in minor units; of each the last writing holds, with its day. */
      left?: { hours?: { on: Day; range: Range }; spend?: { on: Day; range: Range } };
      lines: CostLine[];
    };
  };
};
