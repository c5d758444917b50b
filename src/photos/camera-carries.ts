// What camera files carry that gives a place or a person away, said before they are handed over as they are.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import ExifReader from 'exifreader';
import { AT_ONCE, eachInTurn } from './turns.ts';

/** What may be carried, in the words it is told in, and how many of the files carry it. */
export type Carried = { what: string; files: number }[];

/** Looks through camera files, given as paths relative to the record's folder. */
export async function cameraCarries(folder: string, files: readonly string[]): Promise<Carried> {
  const counts = new Map<string, number>();
  await eachInTurn(files, AT_ONCE, async (file) => {
    for (const what of carriedBy(await readFile(join(folder, file))))
      counts.set(what, (counts.get(what) ?? 0) + 1);
  });
  return KINDS.flatMap(({ what }) => {
    const found = counts.get(what);
    return found === undefined ? [] : [{ what, files: found }];
  });
}

type Tags = ExifReader.ExpandedTags & { mpf?: object };

const KINDS: readonly { what: string; has: (tags: Tags) => boolean }[] = [
  { what: 'the place (GPS)', has: ({ gps, exif }) => gps !== undefined || named(exif, /^GPS(?!Version)/) },
  {
    what: 'a person’s name',
    has: ({ exif, iptc, xmp }) => [exif, iptc, xmp].some((block) => named(block, PERSON)),
  },
  {
    what: 'the camera’s or the lens’s number',
    has: ({ exif, xmp }) => [exif, xmp].some((block) => named(block, NUMBER)),
  },
  { what: 'the camera’s make or model', has: ({ exif }) => named(exif, /^(?:Make|Model)$/) },
  { what: 'the time', has: ({ exif }) => named(exif, /^DateTime/) },
  {
    what: 'notes of the camera’s own',
    has: ({ exif, makerNotes }) => makerNotes !== undefined || named(exif, /^MakerNote$/),
  },
  { what: 'words put in by a program', has: ({ iptc, xmp }) => filled(iptc) || filled(xmp) },
  { what: 'a small picture of its own', has: ({ Thumbnail }) => Thumbnail !== undefined },
  { what: 'a second picture behind the first', has: ({ mpf }) => filled(mpf) },
];

const PERSON = /Artist|OwnerName|Creator|By-?line|Author|Photographer|Copyright/i;
const NUMBER = /SerialNumber/i;

/** What one file carries; nothing is known of a file that can't be read. */
function carriedBy(bytes: Buffer): string[] {
  let tags: Tags;
  try {
    tags = ExifReader.load(bytes, { expanded: true });
  } catch {
    return [];
  }
  return KINDS.filter(({ has }) => has(tags)).map(({ what }) => what);
}

const filled = (block: object | undefined) => Object.keys(block ?? {}).some((name) => name !== '_raw');
const named = (block: object | undefined, like: RegExp) =>
  Object.keys(block ?? {}).some((name) => like.test(name));
