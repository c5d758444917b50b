// Pads and stacks in words: `1/8 + 1/16 in`, `1/16 goes in`.
import { workedInches, workedMillimeters } from '../../figures/length-text.ts';
import { millimetres, type Units } from '../../figures/lengths.ts';
import type { Thickness } from '../../figures/thickness.ts';

/** A stack from the bottom; `none` where there is no pad. */
export function stackText(stack: readonly Thickness[], units: Units): string {
  return padsText(
    stack.map(({ length }) => millimetres(length)),
    units,
  );
}

/** The same of thicknesses in millimeters. */
export function padsText(pads: readonly number[], units: Units): string {
  return pads.length === 0 ? 'none' : `${listed(pads, units)} ${units === 'inch' ? 'in' : 'mm'}`;
}

export type Change = { takeOut: readonly number[]; putIn: readonly number[] };

/** `1/16 goes in`, `1/8 comes out`, `1/8 out, 1/16 in`; empty where nothing changes. */
export function changeText({ takeOut, putIn }: Change, units: Units): string {
  const [out, into] = [listed(takeOut, units), listed(putIn, units)];
  if (out === '') return into === '' ? '' : `${into} ${putIn.length === 1 ? 'goes' : 'go'} in`;
  if (into === '') return `${out} ${takeOut.length === 1 ? 'comes' : 'come'} out`;
  return `${out} out, ${into} in`;
}

/** `two stacks`, `1 stack`: small counts in words. */
export function countText(count: number, what: string): string {
  return `${COUNT[count] ?? String(count)} ${what}${count === 1 ? '' : 's'}`;
}

export const listText = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const COUNT = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** Pads are cut to a rule: 64ths where they are, else thousandths, so that no pad is called what it isn’t. */
function listed(pads: readonly number[], units: Units): string {
  const text = (pad: number) => {
    const in64 = (pad / 25.4) * 64;
    const ruled = Math.abs(in64 - Math.round(in64)) < 1e-6;
    return units === 'inch' ? workedInches(pad, ruled ? 'rule' : 'fine') : workedMillimeters(pad);
  };
  return pads.map(text).join(' + ');
}
