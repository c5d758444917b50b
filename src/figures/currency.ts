// Which currencies there are and how many minor units each has. ISO 4217 decides, never Intl, which
// follows the habit of shops (it gives the forint 0 digits where the standard says 2).
import codes from 'currency-codes';

/** A currency: its ISO 4217 code, the digits of its minor unit, and the sign shown before an amount. */
export type Currency = { code: string; digits: number; sign: string };

/** The currency of an ISO 4217 code in capitals, or nothing when the standard has none by that name. */
export function currencyOf(code: string): Currency | undefined {
  const listed = codes.code(code);
  if (!listed || listed.code !== code) return undefined;
  return { code, digits: listed.digits, sign: signOf(code) };
}

function signOf(code: string): string {
  const parts = new Intl.NumberFormat('en-US', {
    style: 'currency',
    currency: code,
    currencyDisplay: 'narrowSymbol',
  }).formatToParts(0);
  const sign = parts.find((part) => part.type === 'currency')?.value ?? code;
  return sign === code ? `${code} ` : sign;
}
