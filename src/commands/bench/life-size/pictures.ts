// The pictures of a made-up record, as the log lists them.
import { countsOver, dayOf, type Line } from './calendar.ts';
import { type Draw, oneOf } from './draw.ts';

/** The paths of so many pictures, each in the folder of an entry's day. */
export function photoPaths(photos: number, entries: number): string[] {
  let number = 0;
  return countsOver(photos, entries).flatMap((count, entry) =>
    Array.from({ length: count }, () => {
      number += 1;
      return `photos/${dayOf(entry, entries)}/IMG_${String(number).padStart(4, '0')}.jpg`;
    }),
  );
}

/** The pictures of a day, each of a part in hand; the first and last of a day with many are a pair. */
export function photoLines(
  files: readonly string[],
  inHand: readonly Line[],
  names: ReadonlyMap<string, string>,
  draw: Draw,
): string[] {
  const first = inHand.length > 0 ? oneOf(inHand, draw).part : undefined;
  return files.map((path, i) => {
    const file = path.slice(path.lastIndexOf('/') + 1);
    const paired = files.length >= 8 && (i === 0 || i === files.length - 1);
    const part = paired || inHand.length === 0 ? first : oneOf(inHand, draw).part;
    const name = (part && names.get(part)) ?? 'The car';
    const shows = i === 0 ? 'before' : i === files.length - 1 ? 'after' : 'during';
    return `  - file: ${file}
${part ? `    part: ${part}\n` : ''}    shows: ${shows}
${paired ? `    pair: day-${files[0]?.slice(-8, -4)}\n` : ''}    caption: "${name}: ${oneOf(SHOWN, draw)}."
    alt: "${oneOf(SEEN, draw)} with ${name.toLowerCase()} in the middle of the picture."
`;
  });
}

const SHOWN = [
  'the joint before anything was cleaned off',
  'clamped in place, with the card held behind it',
  'the tack line that the later trim had covered',
  'tried for the second time, gap even from top to bottom',
  'what came off, laid out in the order it was fitted',
];
const SEEN = [
  'A close view across a bench',
  'A view from the front left of the body',
  'A hand holding a rule',
];
