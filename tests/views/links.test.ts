import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lineKey } from '../../src/views/links.ts';

it('names a file after its key', () => {
  expect(lineKey('rear-fender-left')).toBe('rear-fender-left');
  expect(lineKey('2025-06')).toBe('2025-06');
  expect(lineKey('Body panels')).toBe('body-panels');
  expect(lineKey('Türen')).toBe('türen');
  expect(lineKey(undefined)).toBe('none');
});

it('gives names that differ in a capital, a comma or a space files of their own', () => {
  const keys = [
    'Trim and top',
    'Trim and Top',
    'trim and top',
    'Trim, and top',
    'trim-and-top',
    'Trim  and top',
  ];
  // Two keys may share a file only where they can't both be groups and ids of one table: `Trim and top`, `trim-and-top`.
  expect(new Set(keys.map(lineKey)).size).toBe(keys.length - 1);
  expect(lineKey('None')).not.toBe('none');
  expect(lineKey('none')).not.toBe('none');
});

it('gives a name that a file and a link can have, whatever the key', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', minLength: 1 }), (key) => {
      expect(lineKey(key)).toMatch(/^[\p{L}\p{N}-]+$/u);
      expect(lineKey(key)).toBe(lineKey(key).toLowerCase());
    }),
    { numRuns: 300 },
  );
});
