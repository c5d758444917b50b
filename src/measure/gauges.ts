// Sheet gauges read backward: which gauge a measured thickness could be, in each system.
import gauges from '../../shared/gauges.json' with { type: 'json' };

/** A gauge with the system that gives it a meaning; thickness in millimeters, `off` the measured less that. */
export type Gauge = { system: string; metals: string[]; number: number; thickness: number; off: number };

/** The nearest gauge of every system, the nearest of all first. The same number means different sheets. */
export function gaugesNear(millimeters: number): Gauge[] {
  return gauges.systems
    .flatMap((each) => {
      const [nearest] = gaugesOf(each, millimeters);
      return nearest ? [nearest] : [];
    })
    .sort(nearer);
}

type System = { name: string; metals: string[]; inches: Record<string, string | undefined> };

function gaugesOf({ name, metals, inches }: System, millimeters: number): Gauge[] {
  return Object.entries(inches)
    .map(([number, inch]) => {
      const thickness = Number(inch) * 25.4;
      return { system: name, metals, number: Number(number), thickness, off: millimeters - thickness };
    })
    .sort(nearer);
}

const nearer = (one: Gauge, other: Gauge): number => Math.abs(one.off) - Math.abs(other.off);
