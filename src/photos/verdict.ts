// What can be wrong with a picture, each said in one sentence with the mend.
import type { Problem } from '../record/place.ts';

/** Why a camera file isn't shown, or, of one that is damaged, why part of it is missing. */
export type Verdict =
  | { why: 'empty' | 'heic' | 'no-picture' | 'unreadable' | 'damaged' }
  | { why: 'too-large'; width: number; height: number }
  | { why: 'carries'; what: string[] }
  | { why: 'unopened'; code: string };

/** The rule that all of these go by. */
export const PHOTO_RULE = 'photo-unreadable';

/** More than this many pixels aren't read: a picture of that size fills the memory, or means to. */
export const MOST_PIXELS = 100_000_000;

/** The problem of a picture that came through in part, or not at all. `file` is relative to the record's folder. */
export function photoProblem(file: string, verdict: Verdict): Problem {
  const [reason, mend] = verdictText(file, verdict);
  return {
    rule: PHOTO_RULE,
    severity: 'warning',
    place: { file, line: 1, column: 1 },
    reason: verdict.why === 'damaged' ? reason : `${reason.slice(0, -1)}, so it isn’t shown.`,
    mend,
  };
}

const AGAIN = 'Copy it from the camera or the phone again, or take it out.';

/** What is wrong with a file and how to mend it, a sentence each. */
export function verdictText(name: string, verdict: Verdict): [reason: string, mend: string] {
  const file = `\`${name}\``;
  switch (verdict.why) {
    case 'empty':
      return [`${file} is empty.`, AGAIN];
    case 'heic':
      return [
        `${file} is an HEIC picture, which can’t be read here.`,
        'Save it again as JPEG, and set the phone’s camera to write JPEG from now on (“most compatible”).',
      ];
    case 'no-picture':
      return [
        `${file} is no picture that can be read here.`,
        'JPEG, PNG, WebP and TIFF can: save it again as JPEG, or take it out of photos/.',
      ];
    case 'unreadable':
      return [`${file} is damaged from its beginning on.`, AGAIN];
    case 'damaged':
      return [
        `${file} is damaged: the part that can’t be read is left blank.`,
        'Copy it from the camera or the phone again.',
      ];
    case 'too-large':
      return [
        `${file} has ${verdict.width} × ${verdict.height} pixels, more than the ${MOST_PIXELS / 1e6} million that are read.`,
        'Save it again at half the width.',
      ];
    case 'carries':
      return [
        `The web picture of ${file} came out with more than the picture in it (${verdict.what.join(', ')}).`,
        'Save the camera file again as JPEG.',
      ];
    case 'unopened':
      return [`${file} can’t be opened (${verdict.code}).`, 'See that it is there and may be read.'];
  }
}
