// What all figures are drawn with: sizes, inks and type, and nothing that moves.
import type { ChartConfiguration } from 'chart.js';

/** A chart ready to be drawn: the configuration, and its size in units for a desk or a phone. */
export type Chart = { config: ChartConfiguration; width: number; height: number };

/** Widths in units: a desk's column, and a phone's of 328 px, where a unit is a pixel. */
export const WIDE = 720;
export const NARROW = 328;

export const INK = '#1d1c18';
export const INK_2 = '#575246';
export const RULE = '#d3ccb9';
export const GREEN = '#1f4434';
/** Thirteen units keep the words readable from 328 px to the width of a desk. */
export const SIZE = 13;
/** The family is quoted: a name with a number in it is no family without. */
export const FONT = { family: '"Source Sans 3"', size: SIZE };

/** What no figure of a page does: move, answer to a pointer, carry a legend. */
export const STILL = {
  animation: false as const,
  responsive: false,
  devicePixelRatio: 1,
  events: [] as [],
  plugins: { legend: { display: false }, tooltip: { enabled: false }, title: { display: false } },
};
