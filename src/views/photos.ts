// The pictures of a record as pages show them.
import { type Day, daysBetween } from '../figures/days.ts';
import { mentions } from '../record/mentions.ts';
import { once } from '../record/once.ts';
import type { CarRecord, Entry } from '../record/record.ts';
import { photoPath } from '../record/record.ts';

/** A file beside the pages, and its size in pixels. */
type Sized = { file: string; width: number; height: number };

/**
 * A picture made for the web in two sizes: the large one, and the small one for rows and lists. `taken` is the
 * camera's own clock, with its offset only where the camera wrote one: `2024-03-10T01:30:00-05:00`.
 */
export type WebPhoto = Sized & { small: Sized; taken?: string };

/** Web pictures by the path of the camera file, relative to the record's folder. */
export type Photos = ReadonlyMap<string, WebPhoto>;

/** A picture with its words and the day it belongs to. */
export type Shot = WebPhoto & {
  /** Width over height, for rows of even height. */
  ratio: number;
  /** Empty when the writer gave none. */
  caption: string;
  /** The picture in words: the writer's, else its caption, else plainly that it has none. */
  alt: string;
  /** The day of the entry that names it. */
  day: string;
  /** When it was taken; the day of its entry when the camera didn't say, or can't be believed. */
  when: string;
  entry: string;
  part?: string;
  shows?: string;
  /** The name that joins a before and an after. */
  pair?: string;
};

/** The pictures of an entry, in the writer's order; one that isn't there is left to the check. They stand on many pages. */
export function shotsOf(entry: Entry, photos: Photos): readonly Shot[] {
  return shotsWith(photos)(entry);
}

const shotsWith = once((photos: Photos) => once((entry: Entry) => writtenShots(entry, photos)));

function writtenShots(entry: Entry, photos: Photos): Shot[] {
  return (entry.photos ?? []).flatMap(({ file, caption, alt, part, shows, pair }) => {
    const web = photos.get(photoPath(file, entry.day));
    if (!web) return [];
    const about = { ...(part ? { part } : {}), ...(shows ? { shows } : {}), ...(pair ? { pair } : {}) };
    return [
      {
        ...web,
        ratio: web.width / web.height,
        caption: caption ?? '',
        alt: alt || caption || 'Photograph without words yet',
        day: entry.day,
        when: believed(web.taken, entry.day) ?? entry.day,
        entry: entry.id,
        ...about,
      },
    ];
  });
}

/** What the camera says, unless it is so far from its entry that its clock was wrong, or the picture an old one. */
function believed(taken: string | undefined, day: Day): string | undefined {
  return taken && Math.abs(daysBetween(taken.slice(0, 10), day)) <= FAR ? taken : undefined;
}

/** Days that a picture may wait for its entry. A clock that was never set is off by years. */
const FAR = 31;

/** All pictures of a part, oldest first. */
export function shotsOfPart(record: CarRecord, photos: Photos, part: string): Shot[] {
  return byPart(record)(photos).get(part) ?? [];
}

const byPart = once((record: CarRecord) =>
  once((photos: Photos) =>
    Map.groupBy(
      record.entries.flatMap((entry) => shotsOf(entry, photos)),
      ({ part }) => part,
    ),
  ),
);

/** The camera files that entries name, in a list or on a tag. Others aren't published. */
export function namedPhotos(record: CarRecord): Set<string> {
  return new Set(mentions(record).flatMap(({ refers, name }) => (refers === 'photo' ? [name] : [])));
}
