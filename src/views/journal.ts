// The whole record as a plain-text ledger, so that its sums can be proved by a program that isn't ours.
// The syntax is hledger's (hledger.org, journal format): transactions of postings that sum to zero.
import type { Currency } from '../figures/currency.ts';
import { plainAmount } from '../figures/money-text.ts';
import type { CarRecord, Entry } from '../record/record.ts';
import type { CostLine, Rollup } from '../rollup/cost-lines.ts';
import { unstated } from '../rollup/unstated.ts';

/**
 * A transaction for each entry. A line is posted to `cost:<kind>:<part>` for what it costs the shop and to
 * `charged:<kind>:<part>` for what the owner is charged, and what the owner pays to `paid`; `balance:shop` and
 * `balance:owner` stand against them. So that `balance:owner` is, with its sign turned, the balance of each statement on
 * its last day, what was changed after it was stated waits in `balance:unstated` for the statement that says so.
 */
export function journalText({ lines }: Rollup, record: CarRecord): string {
  const { car, currency } = record;
  const entries = Map.groupBy(lines, ({ day, entry }) => `${day} ${entry ?? 'statement'}`);
  return [
    `; ${plain(car.name)}: what was spent, charged and paid, in ${currency.code}`,
    'decimal-mark .',
    ...[...entries.values()].map((own) => transaction(own, currency)),
    ...record.entries.flatMap((entry) => payments(entry, currency)),
    ...unstated(record).flatMap(({ day, known, amount, entry, what }) => {
      const title = plain(`changed since it was stated, ${entry}, ${what}`);
      const moved = (on: string, by: number) =>
        written(on, title, [
          posting('balance:owner', by, currency),
          posting('balance:unstated', -by, currency),
        ]);
      return [moved(day, amount), moved(known, -amount)];
    }),
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
  const file = first?.place.file ?? '';
  const title = first?.entry || file.startsWith('statements/') ? file : 'Tax on the statement';
  const against = (account: string, amount: number) =>
    amount === 0 ? [] : [posting(account, -amount, currency)];
  return written(first?.day ?? '', title, [
    ...lines.flatMap((line) => {
      const text = plain(line.text);
      const cost = line.cost === 0 ? [] : [posting(accountOf('cost', line), line.cost, currency, text)];
      const listed = line.charged !== 0 || cost.length === 0;
      return [
        ...cost,
        ...(listed ? [posting(accountOf('charged', line), line.charged, currency, text)] : []),
      ];
    }),
    ...against('balance:shop', sum(lines, 'cost')),
    ...against('balance:owner', sum(lines, 'charged')),
  ]);
}

function payments({ day, file, paid = [] }: Entry, currency: Currency): string[] {
  return paid.map(({ amount, how }) =>
    written(day, file, [
      posting('paid', -amount, currency, plain(how)),
      posting('balance:owner', amount, currency),
    ]),
  );
}

const written = (day: string, title: string, postings: readonly string[]) =>
  `\n${[`${day} ${title}`, ...postings].join('\n')}`;

function posting(account: string, amount: number, currency: Currency, comment = ''): string {
  return `    ${account}  ${plainAmount(amount, currency)} ${currency.code}${comment && `  ; ${comment}`}`;
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
