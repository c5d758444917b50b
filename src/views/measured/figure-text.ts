// Figures with their ± in words, lengths in both units.
import { type Grain, workedInches, workedMillimeters, workedText } from '../../figures/length-text.ts';
import type { Units } from '../../figures/lengths.ts';
import type { Figure } from '../../measure/figure.ts';

/** `5/16 in (7.9 mm)`, or with a ± `5/16 ± 0.051 in (7.9 ± 1.3 mm)`; from millimeters. */
export function figureText({ value, plusMinus }: Figure, units: Units, grain: Grain = 'rule'): string {
  if (plusMinus === undefined || plusMinus === 0) return workedText(value, units, grain);
  const inch = `${workedInches(value, grain)} ± ${spreadInches(plusMinus, grain)} in`;
  const metric = `${workedMillimeters(value, grain)} ± ${spread(plusMinus, grain === 'fine' ? 2 : 1)} mm`;
  return units === 'inch' ? `${inch} (${metric})` : `${metric} (${inch})`;
}

/** A place along a length: to an eighth of an inch, or a whole millimeter. */
export function placeText(mm: number, units: Units): string {
  const in8 = (mm / 25.4) * 8;
  const near = Math.abs(in8 - Math.round(in8)) < 1e-6 ? '' : 'about ';
  const [inch, metric] = [`${workedInches((Math.round(in8) / 8) * 25.4)} in`, `${Math.round(mm)} mm`];
  return units === 'inch' ? `${near}${inch} (${metric})` : `${metric} (${near}${inch})`;
}

/** `1.5°`, or with a ± `1.5 ± 0.05°`. */
export function degreesText({ value, plusMinus }: Figure): string {
  const degrees = degreesOnly(value);
  return plusMinus === undefined || plusMinus === 0 ? `${degrees}°` : `${degrees} ± ${spread(plusMinus, 2)}°`;
}

/** `+1.4°`: a slope as a level gives it. */
export function slopeText(degrees: number): string {
  const text = degreesOnly(degrees);
  return `${degrees > 0 && text !== '0' ? '+' : ''}${text}°`;
}

function degreesOnly(degrees: number): string {
  return String(Number(degrees.toFixed(2)) + 0).replace('-', '−');
}

/** Half-widths are rough: two figures at most (JCGM 100:2008, 7.2.6), and none finer than the figure beside them. */
function spread(plusMinus: number, digits: number): string {
  const two = Number(plusMinus.toPrecision(2));
  return String(Math.max(10 ** -digits, Number(two.toFixed(digits))));
}

function spreadInches(plusMinus: number, grain: Grain): string {
  const in64 = (plusMinus / 25.4) * 64;
  return Math.abs(in64 - Math.round(in64)) < 1e-6 && in64 > 0.5
    ? workedInches(plusMinus)
    : spread(plusMinus / 25.4, grain === 'fine' ? 4 : 3);
}
