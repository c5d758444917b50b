// Finds charged hours on which no rule of `rates` has a say.
import { personOf } from '../record.ts';
import type { Check, Found } from './check.ts';

export const noRateForTheDay: Check = {
  rule: 'no-rate-for-the-day',
  severity: 'error',
  why: 'An hour that no rate covers would be charged nothing without anybody having said so.',
  run: (record) => {
    const { shop } = record;
    const rates = shop.rates ?? [];
    if (rates.length === 0 || !shop.sure('rates')) return [];
    const found: Found[] = [];
    const told = new Map<string, boolean>();
    for (const entry of record.entries) {
      for (const line of entry.hours ?? []) {
        const person = personOf(line, entry, shop);
        if (person === undefined || line['no-charge'] !== undefined) continue;
        const key = `${entry.day} ${person} ${line.work}`;
        const covered =
          told.get(key) ??
          rates.some(
            ({ from, who = person, work = line.work }) =>
              from <= entry.day && who === person && work === line.work,
          );
        told.set(key, covered);
        if (covered) continue;
        found.push({
          place: line.place,
          reason: `No rate in shop.md covers \`${line.work}\` by \`${person}\` on ${entry.day}.`,
          mend: `Let a rule begin by then, such as \`- { from: ${entry.day}, rate: … }\`, or write \`no-charge\` with the reason.`,
          related: [shop.placeAt(['rates'])],
        });
      }
    }
    return found;
  },
};
