// A line of a vendor's bill, taken apart into what stands as lines of its own: goods, freight, tax, handling.
import type { Day } from '../figures/days.ts';
import { type Minor, shareOf, times } from '../figures/money.ts';
import { type Decimal, Exact } from '../figures/rounding.ts';
import { type PaidTax, paidTaxes } from './paid-tax.ts';
import { type HandlingRule, inForce, type TaxRule } from './rules.ts';

/** A line as billed. What comes back has a negative price and deposit. */
export type BillLine = {
  kind: 'bought' | 'outside';
  /** The day whose rules hold: for what comes back, the day that it was bought. */
  rulesOf: Day;
  /** One name for the bill it stands on, for tax that is rounded on the whole bill. */
  bill?: string | undefined;
  price: Minor;
  count?: Decimal | undefined;
  discount?: Minor | undefined;
  freight?: Minor | undefined;
  tax?: Minor | undefined;
  deposit?: Minor | undefined;
};

export type BillSums = {
  /** Price × count, less discount. */
  net: Minor;
  freight: Minor;
  paid: PaidTax[];
  handling: Minor;
  /** Passed on at cost, without handling or tax. */
  deposit: Minor;
  /** What the owner is charged before tax: freight's own part, and the goods with the tax paid on them. */
  charged: { goods: Minor; freight: Minor };
};

/** Handling is added to net, freight and paid tax together, and rounded once for the line. */
export function billSums(
  lines: readonly BillLine[],
  rules: { handling: readonly HandlingRule[]; tax: readonly TaxRule[] },
): BillSums[] {
  const nets = lines.map(netOf);
  const taxes = paidTaxes(
    lines.map(({ kind, rulesOf, bill, freight, tax }, i) => ({
      rulesOf,
      bill,
      tax,
      amounts: { [kind]: nets[i], freight: freight ?? 0 },
    })),
    rules.tax,
  );
  return lines.map((line, i) => {
    const net = nets[i] ?? 0;
    const freight = line.freight ?? 0;
    const paid = taxes[i] ?? [];
    const cost = net + freight + paid.reduce((sum, { amount }) => sum + amount, 0);
    const share = handlingShare(line, rules.handling);
    const whole = withHandling(cost, share);
    const carried = withHandling(freight, share);
    return {
      net,
      freight,
      paid,
      handling: whole - cost,
      deposit: line.deposit ?? 0,
      charged: { goods: whole - carried, freight: carried },
    };
  });
}

/** Price × count, rounded once, less what was taken off. */
export function netOf({ price, count, discount }: Pick<BillLine, 'price' | 'count' | 'discount'>): Minor {
  return times(price, count ?? '1') - (discount ?? 0);
}

function handlingShare({ kind, rulesOf }: BillLine, rules: readonly HandlingRule[]): Decimal {
  return (
    inForce(
      rules.filter((rule) => rule.kind === kind),
      rulesOf,
    )?.share ?? '0'
  );
}

function withHandling(cost: Minor, share: Decimal): Minor {
  return shareOf(cost, new Exact(share).plus(1).toFixed());
}
