// What the camera wrote beside its picture that a record needs: when it was taken, and how it was held.
import ExifReader from 'exifreader';
import { kindOf } from './kind.ts';

/**
 * `taken` is the camera's own clock, `2024-03-10T01:30:00.25-05:00`; without an offset in the file there is none
 * here either, since the zone isn't known. `turned` is EXIF's orientation, 1 to 8, when it isn't upright.
 */
export type CameraFacts = { taken?: string; turned?: number };

/** Tags of EXIF (CIPA DC-008): 0x9003, 0x9011, 0x9291 and 0x0112. */
const TAGS = ['DateTimeOriginal', 'OffsetTimeOriginal', 'SubSecTimeOriginal', 'Orientation'];

/** A JPEG has its EXIF in front, in segments of 64 kB at most; reading on costs more than all else about it. */
const JPEG_HEAD = 262_144;

/** Reads what there is; a file without EXIF, or with EXIF that can't be read, has no facts. */
export function cameraFacts(bytes: Buffer): CameraFacts {
  let tags: ExifReader.ExifTags;
  try {
    const head = kindOf(bytes) === 'jpeg' ? bytes.subarray(0, JPEG_HEAD) : bytes;
    tags = ExifReader.load(head, { expanded: true, includeTags: { exif: TAGS } }).exif ?? {};
  } catch {
    return {};
  }
  const taken = takenText(
    textOf(tags.DateTimeOriginal?.value),
    textOf(tags.OffsetTimeOriginal?.value),
    textOf(tags.SubSecTimeOriginal?.value),
  );
  const turned = Number(tags.Orientation?.value);
  return { ...(taken ? { taken } : {}), ...(turned >= 2 && turned <= 8 ? { turned } : {}) };
}

/** `2024:03:10 01:30:00`, `-05:00` and `25` as one text; nothing when it is no time of the calendar. */
export function takenText(time: string, offset: string, part: string): string | undefined {
  const found = /^(\d{4})[:-](\d\d)[:-](\d\d)[ T](\d\d):(\d\d)(?::(\d\d))?/.exec(time.trim());
  if (!found) return undefined;
  const [year, month, day, hour, minute, second] = found.slice(1).map((figure) => Number(figure ?? 0));
  // Only the calendar's rules are asked for here: the zone doesn't come into it.
  const known = new Date(Date.UTC(year ?? 0, (month ?? 0) - 1, day, hour, minute, second));
  const written = `${found[1]}-${found[2]}-${found[3]}T${found[4]}:${found[5]}:${found[6] ?? '00'}`;
  if (Number(year) < 1900 || known.toISOString().slice(0, 19) !== written) return undefined;
  const fraction = /^\d+$/.test(part.trim()) ? `.${part.trim()}` : '';
  return `${written}${fraction}${/^(?:[+-](?:0\d|1[0-4]):[0-5]\d|Z)$/.exec(offset.trim())?.[0] ?? ''}`;
}

/** EXIF's texts come as a list of one, and end in NUL now and then. */
function textOf(value: unknown): string {
  const one = Array.isArray(value) ? value[0] : value;
  return typeof one === 'string' ? (one.split('\0')[0] ?? '') : '';
}
