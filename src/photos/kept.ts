// What is kept of one camera file: two pictures and their facts, or the verdict that it can't be shown.
import { readFileSync, statSync } from 'node:fs';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { WebPhoto } from '../views/photos.ts';
import type { CameraFacts } from './camera-facts.ts';
import { carried } from './carried.ts';
import { type Names, PICTURES } from './plan.ts';
import type { Verdict } from './verdict.ts';
import type { Pictures } from './web-pictures.ts';

/** Sizes are in pixels and bytes. */
type Size = { width: number; height: number; bytes: number };
/** `refused` stands alone; else both pictures are there, of a damaged file as far as it could be read. */
export type Facts =
  | { refused: Verdict }
  | ({ large: Size; small: Size; damaged?: true; refused?: undefined } & CameraFacts);

/**
 * The facts kept under these names; nothing when a picture is missing or isn't whole. Read without waiting in turns: of
 * thousands of small files the turns would take longer than the reading.
 */
export function readKept(cache: string, names: Names): Facts | undefined {
  try {
    const facts = JSON.parse(readFileSync(join(cache, names.facts), 'utf8')) as Facts;
    if (facts.refused) return facts;
    for (const size of ['large', 'small'] as const) {
      if (statSync(join(cache, names[size])).size !== facts[size].bytes) return undefined;
    }
    return facts;
  } catch {
    return undefined;
  }
}

/** Keeps the pictures and their facts, the facts last. A picture that carries anything isn't kept. */
export async function keepPictures(
  { cache, work }: { cache: string; work: string },
  names: Names,
  { large, small, damaged }: Pictures,
  camera: CameraFacts,
): Promise<Facts> {
  for (const [name, { webp }] of [
    [names.large, large],
    [names.small, small],
  ] as const) {
    await writeFile(join(work, name), webp);
    const what = carried(await readFile(join(work, name)));
    if (what.length > 0) return { refused: { why: 'carries', what } };
  }
  for (const name of [names.large, names.small]) await rename(join(work, name), join(cache, name));
  const size = ({ webp, width, height }: Pictures['large']): Size => ({ width, height, bytes: webp.length });
  return keepFacts({ cache, work }, names, {
    large: size(large),
    small: size(small),
    ...camera,
    ...(damaged ? { damaged } : {}),
  });
}

/** Keeps facts alone: a verdict holds for the same bytes for ever. */
export async function keepFacts(
  { cache, work }: { cache: string; work: string },
  names: Names,
  facts: Facts,
): Promise<Facts> {
  await writeFile(join(work, names.facts), JSON.stringify(facts));
  await rename(join(work, names.facts), join(cache, names.facts));
  return facts;
}

/** The picture as pages name it; nothing when it was refused. */
export function webPhoto(names: Names, facts: Facts): WebPhoto | undefined {
  if (facts.refused) return undefined;
  const { large, small, taken } = facts;
  return {
    file: `${PICTURES}/${names.large}`,
    width: large.width,
    height: large.height,
    small: { file: `${PICTURES}/${names.small}`, width: small.width, height: small.height },
    ...(taken ? { taken } : {}),
  };
}

/** Why it isn't shown, or not whole. */
export function verdictOf(facts: Facts): Verdict | undefined {
  if (facts.refused) return facts.refused;
  return facts.damaged ? { why: 'damaged' } : undefined;
}
