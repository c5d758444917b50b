// Names and value types are those of schema.org/Vehicle and of what it inherits from schema.org/Product and /Thing.
import { describe, expect, it } from 'vitest';
import { forAudience } from '../../src/record/audience.ts';
import { jsonInPage } from '../../src/views/json-text.ts';
import { vehicleOf } from '../../src/views/vehicle.ts';
import { OWNER_WORD, openPrivate, SHOP_WORD } from '../record/private.ts';
import { viewed } from './records.ts';

const CAR = `---
name: Aldermere Fourteen
built: "1934"
style: Drophead coupe
bodied-by: Tarrowby
numbers: { chassis: 14/1187, engine: E 2260 }
known-owners: 3
opened: 2025-02-03
units: inch
currency: USD
---
`;
const of = (texts: Record<string, string>) => vehicleOf(viewed(texts).record);

describe('the car as schema.org has it', () => {
  it('says what the record knows, in the types of each property', () => {
    const vehicle = of({ 'car.md': CAR });
    expect(vehicle).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'Vehicle',
      name: 'Aldermere Fourteen',
      // Date, here an ISO 8601 year.
      productionDate: '1934',
      // Text.
      bodyType: 'Drophead coupe',
      vehicleIdentificationNumber: '14/1187',
      // PropertyValue.
      identifier: [{ '@type': 'PropertyValue', name: 'Engine number', value: 'E 2260' }],
    });
    expect(vehicle.additionalProperty?.[0]).toEqual({
      '@type': 'PropertyValue',
      name: 'Body by',
      value: 'Tarrowby',
    });
  });

  // schema.org/numberOfPreviousOwners: “The number of owners of the vehicle, including the current one.”
  it('counts the present owner among the owners', () => {
    expect(of({ 'car.md': CAR }).numberOfPreviousOwners).toBe(3);
  });

  // schema.org/knownVehicleDamages: known damages, both repaired and unrepaired.
  it('tells damage that was mended and damage that was not, and no part that was sound', () => {
    const part = (name: string, condition: string, more = '') =>
      `---\nname: ${name}\ngroup: Body\nfound: { on: 2025-02-10, condition: ${condition}, note: as told. }\n${more}---\n`;
    const { knownVehicleDamages } = of({
      'car.md': CAR,
      'parts/cowl.md': part('Cowl', 'damaged', 'fabric-now: new-made\n'),
      'parts/door.md': part('Door', 'missing'),
      'parts/hood.md': part('Hood', 'sound'),
    });
    expect(knownVehicleDamages).toBe(
      'Cowl, found damaged: as told; now new made. Door, found missing: as told.',
    );
  });

  it('gives no date for a year that is only known roughly', () => {
    const vehicle = of({ 'car.md': CAR.replace('"1934"', 'about 1934') });
    expect(vehicle.productionDate).toBeUndefined();
    expect(vehicle.description).toContain('about 1934');
  });

  it('leaves out what nobody wrote', () => {
    const bare = CAR.replace(/^(?:style|bodied-by|numbers|known-owners):.*\n/gm, '');
    expect(Object.keys(of({ 'car.md': bare }))).not.toEqual(
      expect.arrayContaining(['bodyType', 'identifier', 'numberOfPreviousOwners']),
    );
  });

  it('holds nothing that its audience may not see', () => {
    const { record } = openPrivate();
    if (!record) throw new Error('the record opens');
    const text = JSON.stringify(vehicleOf(forAudience(record, 'history')));
    for (const word of [SHOP_WORD, OWNER_WORD]) expect(text).not.toContain(word);
  });

  it('can’t be ended by a text of the record, and is read back as it was', () => {
    const name = 'Fourteen </script><script>alert(1)</script> <!-- ';
    const vehicle = of({ 'car.md': CAR.replace('Aldermere Fourteen', name) });
    const text = jsonInPage(vehicle);
    expect(text).not.toContain('<');
    expect(JSON.parse(text)).toEqual(vehicle);
    expect(vehicle.name).toBe(name.trim());
  });
});
