// What is between the shop and each vendor: orders, what was sent back, deposits to come back.
import { type Day, daysBetween } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import type { CarRecord } from '../record/record.ts';
import type { Rollup } from './cost-lines.ts';
import { depositsSum } from './deposits-sum.ts';
import { everyOrder, type Order } from './orders.ts';

/** An order against a day: `overdue` are days since it was expected and isn't there, `late` those by which it came late. */
export type OrderOn = Order & { overdue: number; late: number };

/** Something sent back: what the vendor gives back for the goods with their tax, and a deposit that came back. */
export type SentBack = { what: string; day: Day; entry: string; goods: Minor; deposit: Minor };

export type VendorOrders = {
  vendor: string;
  orders: OrderOn[];
  sentBack: SentBack[];
  /** `days` is how long each has been out. */
  deposits: (Rollup['depositsOut'][number] & { days: number })[];
  depositsOut: Minor;
};

/** Vendors with any of it, those with an open order first, then by name of the id. */
export function vendorOrders(record: CarRecord, rollup: Rollup, today: Day): VendorOrders[] {
  const orders = Map.groupBy(
    everyOrder(record).map((order) => onDay(order, today)),
    ({ vendor }) => vendor,
  );
  const back = Map.groupBy(
    record.entries.flatMap((entry) => (entry.returned ?? []).map((line) => ({ entry, line }))),
    ({ line }) => line.from,
  );
  const deposits = Map.groupBy(rollup.depositsOut, ({ vendor }) => vendor);
  const vendors = [...new Set([...orders.keys(), ...back.keys(), ...deposits.keys()])].sort();
  const isOpen = (vendor: string) => orders.get(vendor)?.some(({ came }) => came === undefined) ?? false;
  return [...vendors.filter(isOpen), ...vendors.filter((vendor) => !isOpen(vendor))].map((vendor) => ({
    vendor,
    orders: orders.get(vendor) ?? [],
    sentBack: (back.get(vendor) ?? []).map(({ entry, line }) => ({
      what: line.what,
      day: entry.day,
      entry: entry.id,
      goods: (line.price ?? 0) + (line.tax ?? 0),
      deposit: line.deposit ?? 0,
    })),
    deposits: (deposits.get(vendor) ?? []).map((out) => ({ ...out, days: daysBetween(out.day, today) })),
    depositsOut: depositsSum({ depositsOut: deposits.get(vendor) ?? [] }),
  }));
}

function onDay(order: Order, today: Day): OrderOn {
  const { expected, came } = order;
  const past = expected === undefined ? 0 : Math.max(0, daysBetween(expected, came ?? today));
  return { ...order, overdue: came === undefined ? past : 0, late: came === undefined ? 0 : past };
}
