// The page of orders: what is ordered, expected and received, what was sent back, deposits to come back, by vendor.
import type { Day } from '../figures/days.ts';
import type { Minor } from '../figures/money.ts';
import { amountText, moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import { type OrderOn, type VendorOrders, vendorOrders } from '../rollup/by-vendor.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { depositsSum } from '../rollup/deposits-sum.ts';
import { datedText } from './dated.ts';
import { type FigureRow, type FigureTable, figure } from './figure-table.ts';
import { page } from './links.ts';
import { namesOf } from './names.ts';

/** `asOf` is the day that overdue days are told for. A table is missing where nothing would stand in it. */
export type OrdersPage = { asOf: string; lead: string; tables: FigureTable[] };

export function ordersPage(record: CarRecord, rollup: Rollup, today: Day): OrdersPage {
  const vendors = vendorOrders(record, rollup, today);
  return {
    asOf: datedText(today),
    lead: leadOf(vendors, rollup, record),
    tables: [
      ordersTable(vendors, record),
      depositsTable(vendors, rollup, record),
      sentBackTable(vendors, record),
    ].filter(({ rows }) => rows.length > 0),
  };
}

function leadOf(vendors: readonly VendorOrders[], rollup: Rollup, { currency }: CarRecord): string {
  const open = vendors.flatMap(({ orders }) => orders.filter(({ came }) => came === undefined));
  const overdue = open.filter((order) => order.overdue > 0);
  const out = depositsSum(rollup);
  const [first] = overdue;
  const late =
    overdue.length === 0 || !first
      ? ''
      : open.length === 1
        ? `, overdue by ${days(first.overdue)}`
        : `, ${overdue.length} of them overdue`;
  return [
    open.length === 0
      ? 'No order is open.'
      : `${open.length === 1 ? '1 order is' : `${open.length} orders are`} open${late}.`,
    out > 0 ? `${moneyText(out, currency)} of deposits is to come back.` : 'No vendor holds a deposit.',
  ].join(' ');
}

function ordersTable(vendors: readonly VendorOrders[], record: CarRecord): FigureTable {
  const names = namesOf(record);
  const day = (of: Day | undefined) => (of === undefined ? '' : datedText(of));
  return {
    caption: `Orders, in ${record.currency.code}`,
    head: 'Vendor, and what was ordered',
    columns: ['Ordered', 'Expected', 'Came', 'Price'].map((head) => ({ head })),
    rows: byVendor(vendors, names.vendor, ({ orders }) =>
      orders.map((order) => ({
        head: order.what,
        to: page.day(order.entry),
        within: true,
        notes: [...(order.part === undefined ? [] : [names.part(order.part)]), ...stateOf(order)],
        cells: [
          day(order.ordered),
          order.expected === undefined ? 'not said' : day(order.expected),
          day(order.came),
          order.price === undefined ? 'not said' : amountText(order.price, record.currency),
        ].map((text) => figure(text)),
      })),
    ),
  };
}

function stateOf({ came, overdue, late, expected }: OrderOn): string[] {
  if (overdue > 0) return [`open, overdue by ${days(overdue)}`];
  if (came === undefined) return ['open'];
  if (late > 0) return [`came ${days(late)} late`];
  return expected === undefined ? [] : ['came in time'];
}

function depositsTable(vendors: readonly VendorOrders[], rollup: Rollup, record: CarRecord): FigureTable {
  const money = (amount: Minor) => figure(amountText(amount, record.currency));
  return {
    caption: `Deposits to come back, in ${record.currency.code}`,
    head: 'Vendor, and what it is for',
    columns: ['Since', 'Days', 'Deposit'].map((head) => ({ head })),
    rows: byVendor(
      vendors,
      namesOf(record).vendor,
      ({ deposits }) =>
        deposits.map(({ text, day, days: out, amount }) => ({
          head: text,
          within: true,
          cells: [figure(datedText(day)), figure(String(out)), money(amount)],
        })),
      ({ depositsOut }) => [figure(''), figure(''), money(depositsOut)],
    ),
    foot: { head: 'To come back', cells: [figure(''), figure(''), money(depositsSum(rollup))] },
  };
}

function sentBackTable(vendors: readonly VendorOrders[], record: CarRecord): FigureTable {
  const money = (amount: Minor) => figure(amount === 0 ? '' : amountText(amount, record.currency));
  return {
    caption: `Sent back, in ${record.currency.code}`,
    head: 'Vendor, and what was sent back',
    columns: ['On', 'For the goods', 'Deposit back'].map((head) => ({ head })),
    rows: byVendor(vendors, namesOf(record).vendor, ({ sentBack }) =>
      sentBack.map(({ what, day, entry, goods, deposit }) => ({
        head: what,
        to: page.day(entry),
        within: true,
        cells: [figure(datedText(day)), money(goods), money(deposit)],
      })),
    ),
  };
}

/** A head for each vendor that has any of these rows. */
function byVendor(
  vendors: readonly VendorOrders[],
  name: (vendor: string) => string,
  rowsOf: (of: VendorOrders) => FigureRow[],
  sums?: (of: VendorOrders) => FigureRow['cells'],
): FigureRow[] {
  return vendors.flatMap((of) => {
    const rows = rowsOf(of);
    const none = rows[0]?.cells.map(() => figure('')) ?? [];
    return rows.length === 0
      ? []
      : [{ head: name(of.vendor), begins: true, cells: sums?.(of) ?? none }, ...rows];
  });
}

const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);
