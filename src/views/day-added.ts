// What an addition did to the totals, in a sentence for the end of a day.
import { minutesText } from '../figures/hours.ts';
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord } from '../record/record.ts';
import { rollUp } from '../rollup/roll-up.ts';

/** `Added 4 h 30 m and $412.50 charged. In all it is now 812 h 15 m and $61,204.50.` */
export function dayAddedText(before: CarRecord, after: CarRecord): string {
  const [was, is] = [rollUp(before).total, rollUp(after).total];
  const money = (amount: number) => moneyText(amount, after.currency);
  const [minutes, charged] = [is.minutes - was.minutes, is.charged - was.charged];
  return `Added ${minutesText(minutes)} and ${money(charged)} charged. In all it is now ${minutesText(is.minutes)} and ${money(is.charged)}.`;
}
