// A record with pictures, for tests: entries are written out, the web pictures are made up from their names.
import type { CarRecord } from '../../src/record/record.ts';
import { photoPath } from '../../src/record/record.ts';
import type { Photos, WebPhoto } from '../../src/views/photos.ts';
import { viewed } from './records.ts';

/** A picture of an entry, and what the camera says of it. */
export type Taken = {
  file: string;
  caption?: string;
  alt?: string;
  part?: string;
  shows?: string;
  pair?: string;
  taken?: string;
  /** Width over height; 4/3 unless said. */
  ratio?: number;
};

/** The record with these pictures, by the day of their entry. */
export function pictured(days: Record<string, readonly Taken[]>): { record: CarRecord; photos: Photos } {
  const photos = new Map<string, WebPhoto>();
  const texts: Record<string, string> = {};
  for (const [day, shots] of Object.entries(days)) {
    for (const { file, taken, ratio = 4 / 3 } of shots)
      photos.set(photoPath(file, day), web(file, ratio, taken));
    const lines = shots.map(({ taken: _, ratio: __, ...line }) => `  - ${JSON.stringify(line)}`);
    texts[`log/${day}.md`] = `---\nphotos:\n${lines.join('\n')}\n---\n\nPictures.\n`;
  }
  return { record: viewed(texts).record, photos };
}

function web(file: string, ratio: number, taken: string | undefined): WebPhoto {
  const size = (width: number) => ({ width, height: Math.round(width / ratio) });
  const sized = { file: `pictures/${file}-large.webp`, ...size(1200) };
  return {
    ...sized,
    small: { file: `pictures/${file}-small.webp`, ...size(480) },
    ...(taken ? { taken } : {}),
  };
}
