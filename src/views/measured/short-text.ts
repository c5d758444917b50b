// The one figure of a reading, for a cell of a table or beside a drawing.
import type { Units } from '../../figures/lengths.ts';
import type { Figure } from '../../measure/figure.ts';
import type { Measured } from '../../rollup/measured.ts';
import { figureText, slopeText } from './figure-text.ts';

/** What a reading comes to in as few words as will do, with its ±; without answer, a dash. */
export function shortText(measured: Measured, units: Units): string {
  if (!measured.answer.ok) return '–';
  switch (measured.kind) {
    case 'level':
      return slopeText(measured.reading.reading.degrees);
    case 'diagonals':
      return sizeText(measured.answer.value.diagonals.off, units);
    case 'heights':
      return sizeText(measured.answer.value.furthest, units);
    case 'straight':
      return sizeText(measured.answer.value.zone.width, units);
    case 'timber': {
      const { change } = measured.answer.value;
      return `${change.value > 0 ? '+' : ''}${figureText(change, units)}`;
    }
    default: {
      const { mean, off } = measured.answer.value;
      const grain = measured.kind === 'thickness' ? 'fine' : 'rule';
      return figureText(off ? { ...off, value: Math.abs(off.value) } : mean, units, grain);
    }
  }
}

/** What the figure is, for the first cell of its row. */
export function figureName({ kind, answer }: Measured): string {
  const summed = kind === 'gaps' || kind === 'thickness' || kind === 'length';
  if (!summed) return FIGURE[kind];
  if (answer.ok && 'off' in answer.value) return `${FIGURE[kind]}, furthest off`;
  return answer.ok && (answer.value as { count?: number }).count === 1
    ? FIGURE[kind]
    : `${FIGURE[kind]}, mean`;
}

const FIGURE: { [kind in Measured['kind']]: string } = {
  level: 'slope',
  diagonals: 'diagonals differ by',
  heights: 'furthest from one plane',
  straight: 'straight within',
  gaps: 'gap',
  timber: 'timber moves by',
  thickness: 'thickness',
  length: 'length',
};

const sizeText = (figure: Figure, units: Units): string =>
  figureText({ ...figure, value: Math.abs(figure.value) }, units);
