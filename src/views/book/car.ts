// The first chapter: the car, its numbers, its story, and who worked on it.
import type { CarRecord } from '../../record/record.ts';
import { datedText } from '../dated.ts';
import { capital } from '../parts.ts';
import { type Block, blocksOf } from './blocks.ts';

/** A name and what stands under it. */
export type Fact = { name: string; text: string };

export type BookCar = { facts: Fact[]; story: Block[]; people: Fact[] };

export function bookCar({ car, shop, entries }: CarRecord): BookCar {
  const last = entries.at(-1)?.day;
  const facts: [string, string | undefined][] = [
    ['Car', car.name],
    ['Built', car.built],
    ['Body', car.style],
    ['Body by', car['bodied-by']],
    ['Owners known', car['known-owners'] === undefined ? undefined : String(car['known-owners'])],
    ...Object.entries(car.numbers ?? {}).map(([name, text]): [string, string] => [
      `${capital(name)} number`,
      text,
    ]),
    ['Work done by', shop.town ? `${shop.shop}, ${shop.town}` : shop.shop],
    ['Work begun', datedText(car.opened)],
    ['Work ended', car.closed && datedText(car.closed)],
    ['Newest entry', car.closed || !last ? undefined : datedText(last)],
    ['Aim', car.aim],
  ];
  return {
    facts: facts.flatMap(([name, text]) => (text === undefined ? [] : [{ name, text }])),
    story: blocksOf(car.body.tree),
    people: shop.people.map(({ name, initials }) => ({ name, text: initials ?? '' })),
  };
}
