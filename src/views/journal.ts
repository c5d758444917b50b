// The whole record as a plain-text ledger, so that its sums can be proved by a program that isn't ours.
// The syntax is hledger's (hledger.org, journal format): transactions of postings that sum to zero.
import type { Currency } from '../figures/currency.ts';
import { plainAmount } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import type { CostLine, Rollup } from '../rollup/cost-lines.ts';

/**
 * A transaction for each entry. A line is posted to `cost:<kind>:<part>` for what it costs the shop and to
 * `charged:<kind>:<part>` for what the owner is charged; `balance:shop` and `balance:owner` stand against them.
 */
export function journalText({ lines }: Rollup, { car, currency }: CarRecord): string {
  const entries = Map.groupBy(lines, ({ day, entry }) => `${day} ${entry ?? 'statement'}`);
  return [
    `; ${plain(car.name)}: what was spent and charged, in ${currency.code}`,
    'decimal-mark .',
    ...[...entries.values()].map((own) => `\n${transaction(own, currency)}`),
    '',
  ].join('\n');
}

/** `charged:labour:rear-fender-left`. */
export function accountOf(side: 'cost' | 'charged', { kind, part }: CostLine): string {
  return `${side}:${kind}:${part ?? WHOLE}`;
}

const WHOLE = 'car-as-a-whole';

function transaction(lines: readonly CostLine[], currency: Currency): string {
  const [first] = lines;
  const title = first?.entry ? first.place.file : 'Tax on the statement';
  const posting = (account: string, amount: number, comment = '') =>
    `    ${account}  ${plainAmount(amount, currency)} ${currency.code}${comment && `  ; ${comment}`}`;
  const balance = (account: string, amount: number) => (amount === 0 ? [] : [posting(account, -amount)]);
  return [
    `${first?.day} ${title}`,
    ...lines.flatMap((line) => {
      const text = plain(line.text);
      const cost = line.cost === 0 ? [] : [posting(accountOf('cost', line), line.cost, text)];
      const listed = line.charged !== 0 || cost.length === 0;
      return [...cost, ...(listed ? [posting(accountOf('charged', line), line.charged, text)] : [])];
    }),
    ...balance('balance:shop', sum(lines, 'cost')),
    ...balance('balance:owner', sum(lines, 'charged')),
  ].join('\n');
}

/** One line without what the syntax reads as a tag or a date: a word with a colon, or square brackets. */
function plain(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ')
    .replace(/ ?:/g, ' :')
    .replaceAll('[', '(')
    .replaceAll(']', ')')
    .trim();
}

function sum(lines: readonly CostLine[], side: 'cost' | 'charged'): number {
  return lines.reduce((total, line) => total + line[side], 0);
}
