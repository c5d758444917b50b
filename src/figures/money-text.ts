// The one place where money becomes text.
import type { Currency } from './currency.ts';
import type { Minor } from './money.ts';

/** `$1,204.50`; a negative amount carries a true minus before the sign. */
export function moneyText(amount: Minor, currency: Currency): string {
  return (amount < 0 ? '−' : '') + currency.sign + bareText(Math.abs(amount), currency);
}

/** `1,204.50`, for the columns of a table whose head names the currency. */
export function amountText(amount: Minor, currency: Currency): string {
  return (amount < 0 ? '−' : '') + bareText(Math.abs(amount), currency);
}

/** `1204.50`, as a machine reads it and as a writer may type it. */
export function plainAmount(amount: Minor, currency: Currency): string {
  const size = String(Math.abs(amount)).padStart(currency.digits + 1, '0');
  const cut = size.length - currency.digits;
  return (amount < 0 ? '-' : '') + size.slice(0, cut) + (currency.digits ? `.${size.slice(cut)}` : '');
}

function bareText(amount: Minor, currency: Currency): string {
  const size = plainAmount(amount, currency);
  const digits = size.length - (currency.digits && currency.digits + 1);
  let text = size;
  for (let at = digits - 3; at > 0; at -= 3) text = `${text.slice(0, at)},${text.slice(at)}`;
  return text;
}
