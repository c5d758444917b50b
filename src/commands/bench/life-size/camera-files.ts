// Camera files for a record of life size: a few dozen scenes of 12 megapixels, each taken many times. Every file has a
// moment of its own in it, so that no two are the same bytes, and each costs a whole decoding.
import { mkdir, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { sceneJpeg } from '../../../photos/timing/made-up.ts';
import { AT_ONCE, eachInTurn } from '../../../photos/turns.ts';

export const SCENES = 24;
const SEED = 1934;
/** The moment that every scene is encoded with, and that each file has its own in place of. */
const NO_MOMENT = '1900:01:01 00:00:00';

/** Writes the pictures that aren't there yet, at paths such as `photos/2025-04-16/IMG_0001.jpg` under a folder. */
export async function writeCameraFiles(folder: string, files: readonly string[]): Promise<void> {
  const missing = await missingOf(folder, files);
  if (missing.length === 0) return;
  const scenes: Buffer[] = [];
  for (let scene = 0; scene < SCENES; scene++) scenes.push(await sceneJpeg(SEED + scene, NO_MOMENT));
  for (const day of new Set(missing.map(({ file }) => dirname(file))))
    await mkdir(join(folder, day), { recursive: true });
  await eachInTurn(missing, AT_ONCE, async ({ file, i }) => {
    await writeFile(join(folder, file), taken(scenes[sceneOf(i)] as Buffer, momentOf(file, i)));
  });
}

/** Which scene the picture with this number shows. */
export function sceneOf(i: number): number {
  return i % SCENES;
}

async function missingOf(folder: string, files: readonly string[]) {
  const missing: { file: string; i: number }[] = [];
  await eachInTurn([...files.entries()], 2 * AT_ONCE, async ([i, file]) => {
    const there = await stat(join(folder, file)).catch(() => undefined);
    if (!there) missing.push({ file, i });
  });
  return missing;
}

/** The moment in the camera's own writing: the day of its folder, and a second of that day that no other has. */
function momentOf(file: string, i: number): string {
  const [, day = ''] = file.split('/');
  const second = 8 * 3600 + ((i * 37) % (9 * 3600));
  const two = (figure: number) => String(Math.floor(figure)).padStart(2, '0');
  return `${day.replaceAll('-', ':')} ${two(second / 3600)}:${two((second / 60) % 60)}:${two(second % 60)}`;
}

/** The same picture, taken at another moment. */
function taken(scene: Buffer, moment: string): Buffer {
  const at = scene.indexOf(NO_MOMENT, 0, 'latin1');
  if (at < 0) throw new Error('The scene has no moment to be replaced');
  const copy = Buffer.from(scene);
  copy.write(moment, at, 'latin1');
  return copy;
}
