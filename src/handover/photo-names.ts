// The names under which photographs are handed over: their day and a number. The name that a camera or a person gave a
// file says more than its caption does, and isn't written anywhere in a hand-over.
import { fullSizeName } from '../photos/at-full-size.ts';
import { mentions } from '../record/mentions.ts';
import type { CarRecord } from '../record/record.ts';
import { namedPhotos } from '../views/photos.ts';

/**
 * By the path of each picture that the record names, its path in the handed record: `photos/2025-02-03/2025-02-03-1.jpg`.
 * Numbers follow the record's own order. Files that go as they are keep their ending.
 */
export function photoNames(record: CarRecord, originals: boolean): Map<string, string> {
  const days = new Map<string, string>();
  // An entry says the day of a picture; a choice only when it was asked.
  for (const { refers, name, entry, choice } of mentions(record).toReversed()) {
    const day = entry?.day ?? (days.get(name) || choice?.asked);
    if (refers === 'photo' && day) days.set(name, day);
  }
  const counts = new Map<string, number>();
  return new Map(
    [...namedPhotos(record)].sort().map((file) => {
      const day = days.get(file) ?? record.car.opened;
      const number = (counts.get(day) ?? 0) + 1;
      counts.set(day, number);
      const name = originals ? file : fullSizeName(file);
      return [file, `photos/${day}/${day}-${number}${endingOf(name)}`];
    }),
  );
}

const endingOf = (file: string) => (/\.[a-z0-9]+$/i.exec(file)?.[0] ?? '').toLowerCase();
