// Charged tax as lines: one beside each taxed line, and one at the end for each rule rounded on the statement.
import { chargedTaxes } from '../estimate/charged-tax.ts';
import { shareText } from '../figures/shares.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostLine } from './cost-lines.ts';
import type { Drawn } from './drawn.ts';
import { taxRules } from './shop-rules.ts';

/** All tax lines. What hasn't been stated yet counts as one open statement, dated on the last day. */
export function taxLines(
  drawn: readonly Drawn[],
  { shop }: CarRecord,
): { byLine: CostLine[]; byStatement: CostLine[] } {
  const taxed = drawn.filter(({ taxed }) => taxed !== undefined);
  const taxes = chargedTaxes(
    taxed.flatMap(({ taxed }) => taxed ?? []),
    taxRules(shop),
  );
  const last =
    drawn
      .map(({ line }) => line.day)
      .toSorted()
      .at(-1) ?? '';
  return {
    byLine: taxed.flatMap(({ line }, i) =>
      (taxes.byLine[i] ?? []).map(({ rule, amount }) => {
        const { minutes, noCharge, workedOut, ...shared } = line;
        const text = `${rule.name} ${shareText(rule.rate)}: ${line.text}`;
        return { ...shared, kind: 'tax' as const, text, cost: 0, charged: amount };
      }),
    ),
    byStatement: taxes.byStatement.map(({ rule, amount }) => ({
      kind: 'tax',
      day: last,
      text: `${rule.name} ${shareText(rule.rate)} on the statement`,
      cost: 0,
      charged: amount,
      place: rule.place,
    })),
  };
}
