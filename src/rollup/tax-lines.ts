// Charged tax as lines: one beside each taxed line, and one for each rule rounded on a statement's sum.
import { added, type LineTax, taxSums } from '../estimate/charged-tax.ts';
import { shareText } from '../figures/shares.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostLine } from './cost-lines.ts';
import type { TaxedLine } from './drawn-lines.ts';
import { issuedStatements } from './issued.ts';
import { taxRules } from './shop-rules.ts';
import { ruleOf, type StatedRule, sameRule } from './stated-lines.ts';

/**
 * All tax lines. Tax on the sum of an issued statement stands as it was issued, on its last day. What hasn't been
 * stated yet counts as one open statement, dated on the last day.
 */
export function taxLines(
  drawn: readonly TaxedLine[],
  record: CarRecord,
): { byLine: CostLine[]; byStatement: CostLine[] } {
  return {
    byLine: drawn.flatMap(({ line, taxes }) =>
      added(taxes).map(({ rule, amount }) => {
        const { minutes, timed, noCharge, workedOut, fixed, ...shared } = line;
        const text = `${rule.name} ${shareText(rule.rate)}: ${line.text}`;
        return { ...shared, kind: 'tax' as const, text, cost: 0, charged: amount };
      }),
    ),
    byStatement: [...issuedTaxes(record), ...openTaxes(drawn, record)],
  };
}

function issuedTaxes(record: CarRecord): CostLine[] {
  return issuedStatements(record).flatMap(({ number, to, sums, file }) =>
    added(sums.taxes.filter(({ rule }) => rule.by === 'statement')).map(({ rule, amount }) => ({
      kind: 'tax',
      day: to,
      text: `${rule.name} ${shareText(rule.rate)} on statement ${number}`,
      cost: 0,
      charged: amount,
      place: file.placeAt(['taxes']),
    })),
  );
}

/** On all that the log charges now, less what statements have taxed already. */
function openTaxes(drawn: readonly TaxedLine[], record: CarRecord): CostLine[] {
  const byStatement = <R extends Pick<StatedRule, 'by'>>(taxes: readonly LineTax<R>[]) =>
    taxes.filter(({ rule }) => rule.by === 'statement');
  const now = drawn.flatMap(({ taxes }) => byStatement(taxes));
  const stated = issuedStatements(record).flatMap(({ sums }) => byStatement(sums.taxes));
  const open = taxSums(
    [
      ...now.map((tax) => ({ ...tax, rule: ruleOf(tax.rule) })),
      ...stated.map(({ amount, ...tax }) => ({ ...tax, basis: -tax.basis })),
    ],
    sameRule,
  );
  const days = drawn.map(({ line }) => line.day).toSorted();
  const placed = new Map(taxRules(record.shop).map((rule) => [sameRule(ruleOf(rule)), rule.place]));
  return added(open).map(({ rule, amount }) => ({
    kind: 'tax',
    day: days.at(-1) ?? '',
    text: `${rule.name} ${shareText(rule.rate)} on the statement`,
    cost: 0,
    charged: amount,
    place: placed.get(sameRule(rule)) ?? record.shop.placeAt(['tax']),
  }));
}
