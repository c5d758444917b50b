// The moisture that timber comes to in the air of a shop or a garage.
import { type Answer, answer, noAnswer } from './answer.ts';

/**
 * Equilibrium moisture as a share of the dry weight, from degrees Celsius and relative humidity as a share: the
 * Hailwood-Horrobin equation with the constants of Simpson 1998, USDA FPL-RN-0268 (seen in a copy of them).
 * An average of species: a single piece may differ by a point.
 */
export function moistureInAir(celsius: number, humidity: number): Answer<number> {
  if (!(humidity >= 0 && humidity <= 1)) return noAnswer('Humidity lies between 0% and 100%.');
  if (!(celsius >= -40 && celsius <= 100)) return noAnswer('The figures hold from −40 °C to 100 °C.');
  const t = celsius;
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = k * humidity;
  const wet = k1 * kh;
  const wetter = k1 * k2 * kh * kh;
  return answer((18 / w) * (kh / (1 - kh) + (wet + 2 * wetter) / (1 + wet + wetter)));
}
