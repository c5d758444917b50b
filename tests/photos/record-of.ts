// A folder with camera files, and what was made of them.
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { type Made, makePhotos } from '../../src/photos/make.ts';
import { emptyFolder } from '../commands/run.ts';

export type Making = {
  folder: string;
  cache: string;
  files: string[];
  make: () => Promise<Made>;
  /** The bytes of the two web pictures of a camera file. */
  webOf: (made: Made, file: string) => Promise<{ large: Buffer; small: Buffer }>;
};

/** Lays camera files down in `photos/`, named by the keys. */
export async function recordOf(pictures: ReadonlyMap<string, Buffer>): Promise<Making> {
  const folder = await emptyFolder();
  const cache = join(await emptyFolder(), 'cache');
  const files = [...pictures.keys()].map((name) => `photos/${name}`);
  for (const [name, bytes] of pictures) {
    await mkdir(dirname(join(folder, 'photos', name)), { recursive: true });
    await writeFile(join(folder, 'photos', name), bytes);
  }
  const screen = { write: () => true };
  const read = (name: string) => readFile(join(cache, basename(name)));
  return {
    folder,
    cache,
    files,
    make: () => makePhotos(folder, files, { cache, screen }),
    webOf: async ({ photos }, file) => {
      const photo = photos.get(file);
      if (!photo) throw new Error(`${file} has no web picture`);
      return { large: await read(photo.file), small: await read(photo.small.file) };
    },
  };
}

/** Every file of a folder with its bytes, sorted. */
export async function bytesIn(folder: string): Promise<Map<string, string>> {
  const names = (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((one) => one.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .sort();
  const held = await Promise.all(names.map((name) => readFile(name, 'base64')));
  return new Map(names.map((name, i) => [name.slice(folder.length + 1), held[i] ?? '']));
}
