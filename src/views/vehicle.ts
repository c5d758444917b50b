// The car as schema.org describes vehicles, for the front page of what leaves the shop. Names and types of properties are
// those of schema.org/Vehicle, /Product, /PropertyValue and /CreativeWork.
import type { CarRecord, Part } from '../record/record.ts';
import { fabricShares } from '../rollup/fabric.ts';
import { whatItIs } from './car.ts';
import { sentence } from './choices.ts';
import { KEPT_WORDS } from './fabric.ts';
import { fabricNow } from './part.ts';
import { capital } from './parts.ts';

type PropertyValue = { '@type': 'PropertyValue'; name: string; value: string | number; unitText?: string };

export type Vehicle = {
  '@context': 'https://schema.org';
  '@type': 'Vehicle';
  name: string;
  description: string;
  /** An ISO 8601 date or year. */
  productionDate?: string;
  bodyType?: string;
  vehicleIdentificationNumber?: string;
  identifier?: PropertyValue[];
  /** The present owner is counted among the previous ones: so schema.org means it. */
  numberOfPreviousOwners?: number;
  /** Damage known of, repaired and unrepaired. */
  knownVehicleDamages?: string;
  additionalProperty?: PropertyValue[];
  subjectOf: {
    '@type': 'CreativeWork';
    name: string;
    /** ISO 8601, from day to day. */
    temporalCoverage: string;
    creator: { '@type': 'Organization'; name: string; address?: string };
    contributor: { '@type': 'Person'; name: string }[];
  };
};

/** From the record as its audience may see it. A field that the record hasn’t is left out. */
export function vehicleOf(record: CarRecord): Vehicle {
  const { car, shop, entries } = record;
  const { chassis, ...numbers } = car.numbers ?? {};
  const damages = damagesOf(record);
  const more = moreOf(record);
  return {
    '@context': 'https://schema.org',
    '@type': 'Vehicle',
    name: car.name,
    description: whatItIs(record),
    // What is only known roughly is no date; the description has it in words.
    ...(/^\d{4}(?:-\d\d(?:-\d\d)?)?$/.test(car.built) && { productionDate: car.built }),
    ...(car.style && { bodyType: car.style }),
    ...(chassis && { vehicleIdentificationNumber: chassis }),
    ...(Object.keys(numbers).length > 0 && {
      identifier: Object.entries(numbers).map(([name, value]) => property(`${capital(name)} number`, value)),
    }),
    ...(car['known-owners'] !== undefined && { numberOfPreviousOwners: car['known-owners'] }),
    ...(damages && { knownVehicleDamages: damages }),
    ...(more.length > 0 && { additionalProperty: more }),
    subjectOf: {
      '@type': 'CreativeWork',
      name: `${car.name}: the record`,
      temporalCoverage: `${car.opened}/${car.closed ?? entries.at(-1)?.day ?? car.opened}`,
      creator: { '@type': 'Organization', name: shop.shop, ...(shop.town && { address: shop.town }) },
      contributor: shop.people.map(({ name }) => ({ '@type': 'Person', name })),
    },
  };
}

const property = (name: string, value: string | number): PropertyValue => ({
  '@type': 'PropertyValue',
  name,
  value,
});

/** What schema.org has no word for: who built the body, the aim, and how much of the car is original. */
function moreOf(record: CarRecord): PropertyValue[] {
  const { car } = record;
  return [
    ...(car['bodied-by'] ? [property('Body by', car['bodied-by'])] : []),
    ...(car.aim ? [property('Aim', car.aim)] : []),
    ...fabricShares(record).map(({ kept, percent }) => ({
      ...property(`Share of parts: ${KEPT_WORDS[kept]}`, percent),
      unitText: '%',
    })),
  ];
}

/** Parts that were found damaged, incomplete or missing, each with how it was found and what it is now. */
function damagesOf(record: CarRecord): string {
  return record.parts
    .filter(({ found }) => found && ['damaged', 'incomplete', 'missing'].includes(found.condition))
    .map((part) => damageOf(part, record))
    .join(' ');
}

/** `Cowl, found damaged: Both lower corners gone; now original (corners new).` */
function damageOf(part: Part, record: CarRecord): string {
  const now = fabricNow(part, record);
  const note = part.found?.note?.replace(/\.$/, '');
  const found = `${part.name}, found ${part.found?.condition}${note ? `: ${note}` : ''}`;
  return sentence(now ? `${found}; now ${now}` : found);
}
