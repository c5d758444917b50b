// The words that a picture carries when it is handed over apart from its page.
import type { CarRecord } from '../record/record.ts';
import { photoPath } from '../record/record.ts';
import type { Photos } from './photos.ts';

/** Of each camera file of a record, the words of the first entry that lists it; of one on a tag, none. */
export function pictureWords(record: CarRecord, photos: Photos) {
  const listed = new Map(
    record.entries
      .flatMap(({ photos: own = [], day }) =>
        own.map((line) => [photoPath(line.file, day), { ...line, day }] as const),
      )
      .reverse(),
  );
  return (file: string) => {
    const line = listed.get(file);
    return {
      title: record.car.name,
      caption: line?.caption ?? '',
      alt: line?.alt ?? '',
      day: (photos.get(file)?.taken ?? line?.day ?? '').slice(0, 10),
      by: record.shop.shop,
    };
  };
}
