import { rename, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readFolder } from '../../src/disk/folder.ts';
import { textsRead } from '../../src/disk/texts-read.ts';
import { emptyFolder } from '../commands/run.ts';

const LATER = () => Date.now() + 60_000;

/** What a folder says at each look, by the same memory. */
async function looksAt(texts: Record<string, string>, clock = LATER) {
  const folder = await emptyFolder();
  const put = (file: string, text: string) => writeFile(join(folder, file), text);
  for (const [file, text] of Object.entries(texts)) await put(file, text);
  const read = textsRead(clock);
  const look = async () => (await readFolder(folder, read())).files;
  return { folder, put, look };
}

it('reads a text once for as long as its size and times stand', async () => {
  const { put, look } = await looksAt({ 'car.md': 'one', 'shop.md': 'shop' });
  const [car, shop] = await look();
  expect([car?.text, shop?.text]).toEqual(['one', 'shop']);
  const again = await look();
  expect(again[0]).toBe(car);
  await put('car.md', 'two');
  const changed = await look();
  expect(changed.map(({ text }) => text)).toEqual(['two', 'shop']);
  expect(changed[1]).toBe(shop);
});

it('reads a text again that got the size and the date of the one before', async () => {
  const { folder, put, look } = await looksAt({ 'car.md': 'one' });
  const old = new Date('2025-03-03T12:00:00Z');
  await utimes(join(folder, 'car.md'), old, old);
  await look();
  await put('car.md', 'two');
  await utimes(join(folder, 'car.md'), old, old);
  expect((await look()).map(({ text }) => text)).toEqual(['two']);
});

it('reads a young text every time, since a disk may tell two saves by one time', async () => {
  const { look } = await looksAt({ 'car.md': 'one' }, Date.now);
  const [first] = await look();
  const [second] = await look();
  expect(second).toEqual(first);
  expect(second).not.toBe(first);
});

it('knows a text by its name', async () => {
  const { folder, look } = await looksAt({ 'car.md': 'one' });
  await look();
  await rename(join(folder, 'car.md'), join(folder, 'shop.md'));
  expect(await look()).toEqual([{ file: 'shop.md', text: 'one' }]);
});
