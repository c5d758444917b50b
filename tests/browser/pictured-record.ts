// A record with more pictures in a month than a page holds, made for the tests: plain colored pictures of many shapes.
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { SMALL } from '../record/small.ts';

/** Pictures in June 2025, and those of them that lack their words. */
export const IN_JUNE = 75;
export const WORDLESS = ['IMG_3.jpg', 'IMG_4.jpg'];

const DAYS = 15;
const SHAPES = [
  [800, 600],
  [800, 533],
  [600, 800],
  [800, 450],
  [533, 800],
] as const;
const WORDS =
  'sill rail cowl hinge strap lead weld scarf ash bolt plate rust paint edge lip crown wire bead lamp hoop tack cloth pad mount shim file beat plane glue clamp left right upper lower first second third before under over along behind inside thin bright dark even true square flat worn split clean soft hard close wide short long deep'.split(
    ' ',
  );

/** Writes the record into a folder of its own. */
export async function picturedRecord(): Promise<{ folder: string; remove: () => Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), 'ashframe-pictured-'));
  const write = async (file: string, what: string | Buffer) => {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), what);
  };
  for (const [file, text] of Object.entries(SMALL)) await write(file, text);
  const shots = Array.from({ length: IN_JUNE }, (_, i) => shotAt(i));
  for (const [day, own] of Map.groupBy(shots, (shot) => shot.day)) {
    const lines = own.map(({ line }) => `  - ${JSON.stringify(line)}`).join('\n');
    await write(`log/${day}.md`, `---\nphotos:\n${lines}\n---\n\nPictures of the day.\n`);
  }
  for (const { day, line, jpeg } of shots) await write(`photos/${day}/${line.file}`, await jpeg());
  return { folder, remove: () => rm(folder, { recursive: true, force: true }) };
}

function shotAt(i: number) {
  const day = `2025-06-${String(2 + Math.floor((i * DAYS) / IN_JUNE)).padStart(2, '0')}`;
  const [width, height] = SHAPES[i % SHAPES.length] ?? SHAPES[0];
  const file = `IMG_${i}.jpg`;
  const words = WORDLESS.includes(file)
    ? {}
    : { caption: sentence(i, 11), alt: sentence(i + 500, 14), shows: i < 40 ? 'before' : 'after' };
  const pair = i === 0 || i === 2 ? { pair: 'cowl-side' } : {};
  const background = { r: (i * 37) % 256, g: (i * 91) % 256, b: (i * 53) % 256 };
  const jpeg = () =>
    sharp({ create: { width, height, channels: 3, background } })
      .jpeg()
      .toBuffer();
  return { day, jpeg, line: { file, part: 'cowl', ...words, ...pair } };
}

/** A caption of so many words, another for each number: what is written of pictures repeats little. */
function sentence(seed: number, count: number): string {
  let at = seed + 1;
  const words = Array.from({ length: count }, () => {
    at = (Math.imul(at, 1103515245) + 12345) >>> 0;
    return WORDS[(at >>> 8) % WORDS.length] ?? '';
  });
  return `${words.join(' ').replace(/^./, (first) => first.toUpperCase())}.`;
}
