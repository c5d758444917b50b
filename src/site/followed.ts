// The record as `npm run dev` follows it: opened after every save, with nothing done again for files that are as they were.
import { lstatSync } from 'node:fs';
import { join } from 'node:path';
import type { Handed } from '../disk/handed.ts';
import { openFolder } from '../disk/open-folder.ts';
import { textsRead } from '../disk/texts-read.ts';
import { lookUpPhotos } from '../photos/look.ts';
import { type Made, makePhotos } from '../photos/make.ts';
import { changedAt } from '../photos/seen.ts';
import { sheetsRead } from '../record/read-sheet.ts';

type Looked = Awaited<ReturnType<typeof lookUpPhotos>>;

/** Gives what opens the folder, as it lies on the disk when it is called, with its pictures made. Throws `DiskFault`. */
export function followed(folder: string): () => Promise<Handed> {
  const read = sheetsRead();
  const texts = textsRead();
  let looked: { as: string; found: Looked; made?: Made } | undefined;
  const look = async (root: string, files: readonly string[]): Promise<Looked> => {
    const as = pictureTimes(root, files);
    if (looked?.as !== as) looked = { as, found: await lookUpPhotos(root, files) };
    return looked.found;
  };
  return async () => {
    const opened = await openFolder(folder, undefined, { text: texts(), reading: async () => read, look });
    const { record, known } = opened;
    if (!record || !looked) return { opened, made: { photos: new Map(), problems: [], made: 0 } };
    looked.made ??= await makePhotos(folder, record.photos, { known });
    return { opened, made: looked.made };
  };
}

/** The names of all pictures with the times they changed: another for any picture that is new, gone or another. */
function pictureTimes(root: string, files: readonly string[]): string {
  return files
    .map((file) => {
      const about = lstatSync(join(root, file), { throwIfNoEntry: false });
      return `${file} ${about?.size} ${about && changedAt(about)}`;
    })
    .join('\n');
}
