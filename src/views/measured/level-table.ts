// What levels said of several places: before and after, what that rises to, and whether it is right.
import { lengthText } from '../../figures/length-text.ts';
import type { Units } from '../../figures/lengths.ts';
import type { MeasuredOf, Thing } from '../../rollup/measured.ts';
import { figureText, slopeText } from './figure-text.ts';
import { type Plain, plainTable } from './plain-table.ts';
import { stateText } from './result-text.ts';

/** A length that all were read over is said once, in the caption. */
export function levelTable(things: readonly Thing<MeasuredOf<'level'>>[], units: Units): Plain {
  const overs = new Set(things.map(({ last }) => overText(last, units)));
  const [only = ''] = overs.size === 1 ? overs : [];
  const rows = things.map(({ name, before, after, last }) => {
    const over = overText(last, units);
    const rise = last.answer.ok ? last.answer.value.rise : undefined;
    const risen = rise ? figureText(rise, units) : '';
    return [
      name || 'not named',
      before ? slope(before) : '',
      after ? slope(after) : last.state === 'trial' ? `${slope(last)}, a trial` : 'not read again',
      only !== '' || over === '' ? risen : `${risen} over ${over}`,
      stateText(last, units),
    ];
  });
  return plainTable(
    only === '' ? 'Before and after' : `Before and after, read over ${only}`,
    ['Place', 'Before', 'After', 'Rise now', 'State'],
    rows,
  );
}

const slope = ({ reading }: MeasuredOf<'level'>): string => slopeText(reading.reading.degrees);

const overText = ({ reading: { over } }: MeasuredOf<'level'>, units: Units): string =>
  over ? lengthText(over, units) : '';
