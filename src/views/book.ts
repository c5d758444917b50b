// Everything the bound book says, as plain data for the printer. Each chapter takes only what a later reader may see:
// no contacts, rates, payments, bills, deposits, or words that never leave the shop.
import type { Day } from '../figures/days.ts';
import type { CarRecord } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { type BookCar, bookCar } from './book/car.ts';
import { type BookChoice, bookChoices } from './book/choices.ts';
import { type BookCosts, bookCosts } from './book/costs.ts';
import { type BookMonth, bookDays } from './book/days.ts';
import { type BookFabric, bookFabric } from './book/fabric.ts';
import { type BookFinishes, bookFinishes } from './book/finishes.ts';
import { type BookFound, bookFound } from './book/found.ts';
import { type BookMarks, bookMarks } from './book/marks.ts';
import { type BookMeasured, bookMeasured } from './book/measured.ts';
import { type BookPlate, bookPlates } from './book/plates.ts';
import { type BookWatch, bookWatch } from './book/watch.ts';
import { type BookWork, bookWork } from './book/work.ts';
import { whatItIs } from './car.ts';
import { datedText } from './dated.ts';
import type { Photos } from './photos.ts';

/** `sum` is the one sum of the hand-over's other files; without it the book stands alone. */
export type BookAsked = { made: Day; sum?: string; costs?: boolean };

export type BookData = {
  title: string;
  whatItIs: string;
  shop: string;
  /** The days that the record goes over. */
  period: string;
  made: { day: Day; text: string };
  sum: string;
  car: BookCar;
  found: BookFound;
  fabric: BookFabric;
  choices: BookChoice[];
  work: BookWork;
  days: BookMonth[];
  measured: BookMeasured;
  finishes: BookFinishes;
  marks: BookMarks;
  plates: BookPlate[];
  watch: BookWatch;
  costs?: BookCosts;
};

export function bookData(
  record: CarRecord,
  rollup: Rollup,
  photos: Photos,
  { made, sum = '', costs = false }: BookAsked,
): BookData {
  const { car, shop, entries } = record;
  const last = car.closed ?? entries.at(-1)?.day ?? car.opened;
  return {
    title: car.name,
    whatItIs: whatItIs(record),
    shop: shop.town ? `${shop.shop}, ${shop.town}` : shop.shop,
    period: last === car.opened ? datedText(last) : `${datedText(car.opened)} to ${datedText(last)}`,
    made: { day: made, text: datedText(made) },
    sum,
    car: bookCar(record),
    found: bookFound(record),
    fabric: bookFabric(record),
    choices: bookChoices(record),
    work: bookWork(record),
    days: bookDays(record),
    measured: bookMeasured(record),
    finishes: bookFinishes(record),
    marks: bookMarks(record),
    plates: bookPlates(record, photos),
    watch: bookWatch(record),
    ...(costs && { costs: bookCosts(record, rollup) }),
  };
}
