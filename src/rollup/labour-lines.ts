// Hours of the log as cost lines, each with the shop materials that go with it, and prices fixed beforehand.
import { labourSums } from '../estimate/labour.ts';
import { materialsOf } from '../estimate/materials.ts';
import { type CarRecord, personOf } from '../record/record.ts';
import { type Drawn, groupsOf, sourceOf } from './drawn.ts';
import { fixedPrices } from './fixed-prices.ts';

/** A line of labor for each line of hours, in order of day, and one of materials where there are any. */
export function labourLines(record: CarRecord): Drawn[] {
  const { shop } = record;
  const { step, minimum } = shop;
  const rules = { rates: shop.rates ?? [], pay: shop.pay ?? [], step, minimum };
  const fixed = fixedPrices(record);
  const groups = groupsOf(record);
  const worked = record.entries.flatMap((entry) =>
    (entry.hours ?? []).map((hours) => {
      const person = personOf(hours, entry, shop);
      const inPrice = fixed.priceOf(hours, entry);
      const free = hours['no-charge'] !== undefined || inPrice !== undefined;
      const sums = labourSums(
        { day: entry.day, who: person, work: hours.work, minutes: hours.time, free },
        rules,
      );
      const source = {
        ...sourceOf(hours, entry, groups),
        work: hours.work,
        ...(person !== undefined && { person }),
      };
      return { day: entry.day, hours, inPrice, source, ...sums };
    }),
  );
  const materials = materialsOf(worked, shop.materials ?? []);
  const lines = worked.flatMap((hour, i): Drawn[] => {
    const { day, hours, inPrice, source, cost, charged, chargedMinutes, rate } = hour;
    const used = materials[i] ?? 0;
    const text = hours.note ?? hours.work;
    const noCharge = hours['no-charge'];
    const labour: Drawn = {
      line: {
        ...source,
        kind: 'labour',
        text,
        minutes: hours.time,
        ...(chargedMinutes > 0 && { timed: { minutes: chargedMinutes, rate } }),
        cost,
        charged,
        ...(noCharge !== undefined && { noCharge }),
        ...(inPrice !== undefined && noCharge === undefined && { fixed: { is: 'hours', of: inPrice } }),
      },
      taxed: { day, charged: { labour: charged }, exempt: hours.exempt },
    };
    if (used === 0) return [labour];
    const line = {
      ...source,
      kind: 'materials' as const,
      text: `Shop materials: ${text}`,
      cost: 0,
      charged: used,
    };
    return [labour, { line, taxed: { day, charged: { materials: used }, exempt: hours.exempt } }];
  });
  return [...lines, ...fixed.lines];
}
