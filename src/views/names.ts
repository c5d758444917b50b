// The names that ids stand for, for every page.
import { once } from '../record/once.ts';
import type { CarRecord } from '../record/record.ts';

/** Looks names up once; an unknown id shows as itself, since the check has already told of it. */
export const namesOf = once((record: CarRecord) => {
  const parts = new Map(record.parts.map(({ id, name }) => [id, name]));
  const people = new Map(record.shop.people.map((person) => [person.id, person]));
  const vendors = new Map((record.shop.vendors ?? []).map(({ id, name }) => [id, name]));
  const lines = new Map(
    record.parts.flatMap(({ id, planned = [] }) => planned.map((line) => [`${id}/${line.line}`, line.do])),
  );
  return {
    part: (id: string | undefined) => (id === undefined ? 'The car as a whole' : (parts.get(id) ?? id)),
    person: (id: string | undefined) => (id === undefined ? '' : (people.get(id)?.name ?? id)),
    initials: (id: string | undefined) =>
      id === undefined ? '' : (people.get(id)?.initials ?? people.get(id)?.name ?? id),
    vendor: (id: string | undefined) => (id === undefined ? '' : (vendors.get(id) ?? id)),
    line: (name: string) => lines.get(name) ?? name,
  };
});

export type Names = ReturnType<typeof namesOf>;
