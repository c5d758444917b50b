// The pictures of a record as pages show them.
import type { CarRecord, Entry } from '../record/record.ts';
import { photoPath } from '../record/record.ts';

/** A picture made for the web: its file beside the pages, and its size in pixels. */
export type WebPhoto = { file: string; width: number; height: number };

/** Web pictures by the path of the camera file, relative to the record's folder. */
export type Photos = ReadonlyMap<string, WebPhoto>;

/** A picture with its words and the day it belongs to. */
export type Shot = WebPhoto & {
  /** Width over height, for rows of even height. */
  ratio: number;
  caption: string;
  alt: string;
  day: string;
  entry: string;
  part?: string;
  shows?: string;
};

/** The pictures of an entry, in the writer's order; one that isn't there is left to the check. */
export function shotsOf(entry: Entry, photos: Photos): Shot[] {
  return (entry.photos ?? []).flatMap(({ file, caption, alt, part, shows }) => {
    const web = photos.get(photoPath(file, entry.day));
    if (!web) return [];
    const about = { ...(part ? { part } : {}), ...(shows ? { shows } : {}) };
    return [
      {
        ...web,
        ratio: web.width / web.height,
        caption: caption ?? '',
        alt: alt ?? caption ?? '',
        day: entry.day,
        entry: entry.id,
        ...about,
      },
    ];
  });
}

/** All pictures of a part, oldest first. */
export function shotsOfPart(record: CarRecord, photos: Photos, part: string): Shot[] {
  return record.entries.flatMap((entry) => shotsOf(entry, photos)).filter((shot) => shot.part === part);
}
