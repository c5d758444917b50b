// The web pictures of a few camera files, made where they aren’t there yet; a file that stays as it is isn’t read again.
import { mkdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { webPhoto } from '../photos/kept.ts';
import { photoCache } from '../photos/make.ts';
import { maker } from '../photos/maker.ts';
import { contentOf } from '../photos/plan.ts';
import { inWorkFolder } from '../photos/work-folder.ts';
import type { Photos, WebPhoto } from '../views/photos.ts';

/** Gives the pictures by their camera files; those that can’t be shown are left out. */
export function webPictures(root: string, cache = photoCache): (files: readonly string[]) => Promise<Photos> {
  const known = new Map<string, { as: string; photo: WebPhoto | undefined }>();
  const look = async (file: string, work: string): Promise<WebPhoto | undefined> => {
    const { size, mtimeMs } = await stat(join(root, file));
    const as = `${size} ${mtimeMs}`;
    const before = known.get(file);
    if (before?.as === as) return before.photo;
    const bytes = await readFile(join(root, file));
    const { names, facts } = await maker({ cache, work })(contentOf(bytes), bytes);
    const photo = webPhoto(names, facts);
    known.set(file, { as, photo });
    return photo;
  };
  return async (files) => {
    await mkdir(cache, { recursive: true });
    return inWorkFolder(cache, async (work) => {
      const photos = new Map<string, WebPhoto>();
      for (const file of files) {
        const photo = await look(file, work).catch(() => undefined);
        if (photo) photos.set(file, photo);
      }
      return photos;
    });
  };
}
