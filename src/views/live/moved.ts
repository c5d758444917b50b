// What a reader may move on an open choice, and the choice as it stands when they have.
import { pertMean } from '../../estimate/uncertain/pert.ts';
import { moneyText } from '../../figures/money-text.ts';
import { certain, type Range } from '../../figures/ranges.ts';
import { stepOf } from './rounded.ts';
import { type Sheet, shortName } from './sheet.ts';
import { FAR } from './turning-words.ts';

/**
 * One figure that may be moved. `key` stands in the address after `#`. Hours and money are the expected sum of an
 * option: its lines keep their shares of it and their spread. Money in whole units of the currency, chances in percent.
 * A rate belongs to no option.
 */
export type Control = {
  key: string;
  is: 'rate' | 'hours' | 'money' | 'chance';
  option?: { id: string; name: string };
  drivers: readonly string[];
  label: string;
  value: number;
  min: number;
  max: number;
  step: number;
};

/** Where the reader has moved the controls; one that isn't here stands where the record has it. */
export type Moved = ReadonlyMap<string, number>;

/** Rates first, then for each option its hours, its purchases and its chance of failing. */
export function controlsOf(sheet: Sheet): Control[] {
  const { sums, labels, bought, currency } = sheet;
  const one = 10 ** currency.digits;
  const range = (id: string): Range => sums.drivers.find((driver) => driver.id === id)?.range ?? certain(0);
  const mean = (ids: readonly string[]) => ids.reduce((sum, id) => sum + pertMean(range(id)), 0);
  const rates = sums.drivers
    .filter(({ kind }) => kind === 'rate')
    .map(({ id }, i): Control => {
      const value = range(id).likely / one;
      const label = labels[id] ?? id;
      return {
        key: i === 0 ? 'rate' : `rate-${i + 1}`,
        is: 'rate',
        drivers: [id],
        label: label.charAt(0).toUpperCase() + label.slice(1),
        ...about(value, 1),
      };
    });
  const options = sums.options.flatMap(({ id, canFail }): Control[] => {
    const name = shortName(sheet, id);
    const group = (what: string) => sums.groups?.find((each) => each.id === `${what} ${id}`)?.drivers ?? [];
    const [hours, money] = [group('hours'), group('money')];
    const [time, cost] = [mean(hours), mean(money) / one];
    const step = time < 10 ? 0.25 : 1;
    const option = { id, name };
    return [
      ...(hours.length > 0
        ? [
            {
              key: `${id}.hours`,
              is: 'hours' as const,
              option,
              drivers: hours,
              label: `Hours: ${name}`,
              ...about(Math.round(time / step) * step, step),
            },
          ]
        : []),
      ...(cost > 0
        ? [
            {
              key: `${id}.bought`,
              is: 'money' as const,
              option,
              drivers: money,
              label: bought[id] ?? `Bought for ${name}`,
              ...about(Math.round(cost), Math.max(1, stepOf(cost) / 10)),
            },
          ]
        : []),
      ...(canFail
        ? [
            {
              key: `${id}.fails`,
              is: 'chance' as const,
              option,
              drivers: [canFail.chance],
              label: `Chance of failing: ${name}`,
              ...about(Math.round(range(canFail.chance).likely * 1000) / 10, 1),
              max: 100,
            },
          ]
        : []),
    ];
  });
  return [...rates, ...options];
}

/** In steps from the value down to nothing, or nearly, and up to two and a half times it. */
function about(value: number, step: number): Pick<Control, 'value' | 'min' | 'max' | 'step'> {
  const min = Math.round((value % step) * 1000) / 1000;
  return { value, min, max: min + Math.ceil((value * FAR) / step) * step, step };
}

/** `$96.00`, `34 h`, `22%`: the words a reader sees and hears. */
export function controlText({ is }: Control, value: number, { currency }: Sheet): string {
  if (is === 'hours') return `${value} h`;
  if (is === 'chance') return `${value}%`;
  const text = moneyText(Math.round(value * 10 ** currency.digits), currency);
  return is === 'rate' ? text : text.replace(/\.0+$/, '');
}

/** The sheet with the reader's figures in it. A control back where it stood leaves its ranges untouched. */
export function movedSheet(sheet: Sheet, moved: Moved): Sheet {
  const changed = new Map<string, (range: Range) => Range>();
  for (const control of controlsOf(sheet)) {
    const to = moved.get(control.key);
    if (to === undefined || to === control.value) continue;
    const change = changeOf(control, to, sheet);
    for (const driver of control.drivers) changed.set(driver, change);
  }
  if (changed.size === 0) return sheet;
  const drivers = sheet.sums.drivers.map((driver) => ({
    ...driver,
    range: changed.get(driver.id)?.(driver.range) ?? driver.range,
  }));
  const rates = drivers.filter(({ kind }) => kind === 'rate').map(({ range }) => range.likely);
  const hourly = Math.max(0, ...rates);
  const { hourly: _, ...rest } = sheet.sums;
  return { ...sheet, sums: { ...rest, drivers, ...(hourly > 0 && { hourly }) } };
}

function changeOf({ is, drivers }: Control, to: number, { sums, currency }: Sheet) {
  if (is === 'rate') return () => certain(Math.round(to * 10 ** currency.digits));
  if (is === 'chance') return () => certain(to / 100);
  const members = sums.drivers.filter(({ id }) => drivers.includes(id));
  const now = members.reduce((sum, { range }) => sum + pertMean(range), 0);
  const by = (is === 'money' ? to * 10 ** currency.digits : to) / now;
  return ({ low, likely, high }: Range) => ({ low: low * by, likely: likely * by, high: high * by });
}

/** `rate=96&repair.hours=40`, for the address after `#`; empty when nothing is moved. */
export function movedText(moved: Moved): string {
  return [...moved].map(([key, value]) => `${encodeURIComponent(key)}=${value}`).join('&');
}

/** Reads such a text. What is no control, no number or out of its bounds is left where the record has it. */
export function readMoved(text: string, controls: readonly Control[]): Map<string, number> {
  const given = new URLSearchParams(text.replace(/^#/, ''));
  return new Map(
    controls.flatMap(({ key, min, max, value }): [string, number][] => {
      const written = given.get(key);
      const to = written === null || written.trim() === '' ? Number.NaN : Number(written);
      return to >= min && to <= max && to !== value ? [[key, to]] : [];
    }),
  );
}
