// The front matter of a statement’s file: every line and figure, a line each.
import type { LineTax } from '../../estimate/charged-tax.ts';
import type { Day } from '../../figures/days.ts';
import type { Minor } from '../../figures/money.ts';
import { plainAmount } from '../../figures/money-text.ts';
import { shareText } from '../../figures/shares.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Statement } from '../../rollup/issued.ts';
import type { StatedLine, StatedRule } from '../../rollup/stated-lines.ts';
import { taxLetters } from './words.ts';

/** Number and day of issue. */
export type Issue = { number: string; issued: Day };

/** The keys in the order of the schema, without the digest. */
export function keysOf(
  { from, to, lines, corrections, sums }: Statement,
  issue: Issue,
  record: CarRecord,
): string[] {
  const money = (amount: Minor) => plainAmount(amount, record.currency);
  const letter = taxLetters(sums.taxes);
  const line = (of: StatedLine) => flow(lineKeys(of, money, letter));
  const { labour, bills, materials, deposits, corrections: corrected, tax, paid } = sums;
  const all = { labour, bills, materials, deposits, corrections: corrected, tax, paid };
  return [
    `number: ${quoted(issue.number)}`,
    `from: ${from}`,
    `to: ${to}`,
    `issued: ${issue.issued}`,
    `brought-forward: ${money(sums.broughtForward)}`,
    ...list('lines', lines.map(line)),
    ...list(
      'corrections',
      corrections.map(({ was, now }) =>
        flow([
          ['was', was && line(was)],
          ['now', now && line(now)],
        ]),
      ),
    ),
    ...list(
      'taxes',
      sums.taxes.map((sum) => taxKeys(sum, letter(sum), money)),
    ),
    `sums: ${flow(Object.entries(all).map(([name, amount]) => [name, money(amount)]))}`,
    `balance: ${money(sums.balance)}`,
  ];
}

type Keys = [key: string, value: string | undefined][];

function lineKeys(
  line: StatedLine,
  money: (amount: Minor) => string,
  letter: (tax: LineTax<StatedRule>) => string,
): Keys {
  const { minutes, timed, amounts, taxes } = line;
  const text = (words: string | undefined) => words && quoted(words);
  const taxed = taxes.map((tax) =>
    flow([
      ['tax', letter(tax)],
      ['basis', money(tax.basis)],
      ['amount', tax.amount === undefined ? undefined : money(tax.amount)],
    ]),
  );
  return [
    ['day', line.day],
    ['entry', line.entry],
    ['kind', line.kind],
    ['what', quoted(line.what)],
    ['part', text(line.part)],
    ['work', text(line.work)],
    ['by', text(line.person)],
    ['time', minutes === undefined ? undefined : time(minutes)],
    ['charged', timed && time(timed.minutes)],
    ['rate', timed && money(timed.rate)],
    ['no-charge', text(line.noCharge)],
    ['in-price', line.inPrice && 'true'],
    ['from', text(line.vendor)],
    ['bill', text(line.bill)],
    ['paid-by-owner', line.byOwner && 'true'],
    ['exempt', line.exempt && 'true'],
    ...Object.entries(amounts).map(([of, amount]): Keys[number] => [of, money(amount)]),
    ['taxes', taxed.length > 0 ? `[${taxed.join(', ')}]` : undefined],
  ];
}

function taxKeys(
  { rule, within, basis, amount }: LineTax<StatedRule> & { amount: Minor },
  tax: string,
  money: (amount: Minor) => string,
): string {
  const { name, rate, by, rounding } = rule;
  return flow([
    ['tax', tax],
    ['name', quoted(name)],
    ['rate', shareText(rate)],
    ['by', by],
    ['rounding', rounding],
    ['within', within && shareText(within)],
    ['basis', money(basis)],
    ['amount', money(amount)],
  ]);
}

/** `4h 15m`, as a writer types it. */
function time(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  return [...(hours > 0 ? [`${hours}h`] : []), ...(rest > 0 || hours === 0 ? [`${rest}m`] : [])].join(' ');
}

const flow = (keys: Keys) =>
  `{ ${keys.flatMap(([key, value]) => (value === undefined ? [] : [`${key}: ${value}`])).join(', ')} }`;

const list = (key: string, items: readonly string[]) =>
  items.length === 0 ? [] : [`${key}:`, ...items.map((item) => `  - ${item}`)];

/** Bare where nothing in it is YAML, else in quotes: JSON’s are YAML’s too. */
function quoted(text: string): string {
  const bare =
    /^\p{L}[\p{L}\p{N} ’./-]*$/u.test(text) && !/^(null|true|false)$/i.test(text) && !text.endsWith(' ');
  return bare ? text : JSON.stringify(text);
}
