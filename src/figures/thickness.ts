// Sheet thickness: a length, or a gauge number with the system that gives it a meaning.
import gauges from '../../shared/gauges.json' with { type: 'json' };
import { type Length, readLength, type Units } from './lengths.ts';
import { type Reading, read, unread } from './reading.ts';

/** A thickness; when it was written as a gauge, the system is named, since three systems share the numbers. */
export type Thickness = { length: Length; gauge?: { number: number; system: string } };

const EXPECTED = 'a thickness such as `18 ga steel`, `0.048 in` or `1.2 mm`';

/** Reads a thickness. A gauge needs its metal: `18 ga` alone could be three different sheets. */
export function readThickness(text: string, units?: Units): Reading<Thickness> {
  const gauge = /^(\d{1,2})\s*(?:ga|gauge)\.?\s*(.*)$/i.exec(text.trim());
  if (!gauge) {
    const length = readLength(text, units);
    return length.ok ? read({ length: length.value }) : unread(EXPECTED);
  }
  const metal = (gauge[2] ?? '').trim().toLowerCase();
  const system = gauges.systems.find((each) => each.metals.includes(metal));
  if (!system) {
    return unread(
      `a gauge with its metal: ${gauges.systems
        .flatMap((each) => each.metals)
        .map((m) => `\`${gauge[1]} ga ${m}\``)
        .join(', ')}`,
    );
  }
  const number = Number(gauge[1]);
  const sheet = (system.inches as Record<string, string>)[String(number)];
  if (!sheet) return unread(`${EXPECTED}: ${system.name} has no ${number} gauge here`);
  const length = readLength(`${sheet} in`);
  return length.ok ? read({ length: length.value, gauge: { number, system: system.name } }) : length;
}
