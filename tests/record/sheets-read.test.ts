import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { expect, it } from 'vitest';
import { type Opened, openRecord } from '../../src/record/open.ts';
import { sheetsRead } from '../../src/record/read-sheet.ts';
import { SMALL } from './small.ts';

const opened = (texts: Record<string, string>, read?: ReturnType<typeof sheetsRead>): Opened =>
  openRecord({
    files: Object.entries(texts).map(([file, text]) => ({ file, text })),
    photos: [],
    today: '2025-12-31',
    read,
  });
const plainly = (one: Opened) => JSON.stringify(one);

it('a record opened again with what was read before is the one that is opened afresh', () => {
  const chance = xoroshiro128plus(1934);
  const read = sheetsRead();
  const texts: Record<string, string> = { ...SMALL };
  const names = Object.keys(texts);
  let [wrong, currencies] = [0, 0];
  for (let change = 0; change < 90; change++) {
    const file = names[uniformInt(chance, 0, names.length - 1)] ?? '';
    const text = texts[file] ?? '';
    // Every third change is taken back; the others take a sign out, put one in, or set another currency.
    const at = uniformInt(chance, 0, text.length);
    if (change % 3 === 2) texts[file] = SMALL[file as keyof typeof SMALL];
    else if (file === 'car.md' && change % 2 === 0) {
      texts[file] = text.replace('USD', 'JPY');
      currencies += 1;
    } else texts[file] = `${text.slice(0, at)}${change % 2 === 0 ? '' : '['}${text.slice(at + 1)}`;
    const fresh = opened(texts);
    expect(plainly(opened(texts, read)), `after change ${change}`).toBe(plainly(fresh));
    wrong += fresh.problems.length > 0 ? 1 : 0;
  }
  expect(wrong).toBeGreaterThan(30);
  expect(currencies).toBeGreaterThan(3);
});

it('only a text that changed is read anew', () => {
  const read = sheetsRead();
  const before = opened(SMALL, read).record;
  const after = opened(
    { ...SMALL, 'log/2025-03-03.md': `${SMALL['log/2025-03-03.md']}\nPrimed.\n` },
    read,
  ).record;
  expect(after?.parts[0]?.body).toBe(before?.parts[0]?.body);
  expect(after?.shop.body).toBe(before?.shop.body);
  expect(after?.entries[0]?.body).not.toBe(before?.entries[0]?.body);
});
