// What stands around every page, and what every page may name.
import { monthText, shortDayText } from '../figures/days.ts';
import type { CarRecord } from '../record/record.ts';
import type { Sees } from './audience.ts';

/** `foot` says whose record it is and how far it goes; `parts` are the names of parts by id. */
export type Frame = {
  car: string;
  built: string;
  problems: number;
  errors: number;
  foot: string;
  parts: Record<string, string>;
};

/** The frame of a record, as far as it could be opened. */
export function frameOf(
  record: CarRecord | undefined,
  { problems, errors }: { problems: readonly unknown[]; errors: number },
  sees: Sees,
): Frame {
  return {
    car: record?.car.name ?? 'The record',
    built: String(record?.car.built ?? ''),
    problems: problems.length,
    errors,
    foot: record ? footOf(record, sees) : '',
    parts: Object.fromEntries((record?.parts ?? []).map(({ id, name }) => [id, name])),
  };
}

function footOf({ shop, car, entries, currency, units }: CarRecord, sees: Sees): string {
  const last = entries.at(-1)?.day;
  if (!last) return '';
  return [
    `${shop.shop}.`,
    `Record opened ${shortDayText(car.opened)}, ${car.opened.slice(0, 4)};`,
    `written up to ${shortDayText(last)}, ${monthText(last).split(' ')[1]}.`,
    ...(sees.money ? [`Amounts in ${currency.code}.`] : []),
    `Measurements in ${units === 'inch' ? 'inches' : 'millimeters'}.`,
  ].join(' ');
}
