// The words of a made-up record, as long as a restorer's are.
import { type Draw, oneOf } from './draw.ts';

/** A paragraph of so many sentences about a part. */
export function prose(sentences: number, about: string, draw: Draw): string {
  const said = Array.from({ length: sentences }, () => `${oneOf(BEGUN, draw)} ${oneOf(DONE, draw)}.`);
  return broken(said.join(' ').replaceAll('IT', about.toLowerCase()));
}

/** A short note, as it stands beside a line of hours. */
export function note(draw: Draw): string {
  return oneOf(NOTES, draw);
}

/** Lines of at most 110 characters, as they are typed. */
function broken(text: string): string {
  return text.replace(/(?=.{111})(.{1,110})\s/g, '$1\n');
}

const BEGUN = [
  'Most of the morning went into IT, which',
  'Against the pattern from last week IT',
  'With the straps slack and nothing leaning on it IT',
  'After a night in the warm the joint on IT',
  'Ines held the lamp low across IT, and the surface',
  'What we had taken for wear on IT',
  'Set against the drawing, the rear edge of IT',
  'Dry, and with every bolt up by hand, IT',
  'Nobody had looked behind IT since the first repair, and it',
  'Under two coats of green and one of black IT',
  'Read again at the same three places, IT',
  'The old screw holes in IT say that it',
];
const DONE = [
  'came up true at the third mount and stood 1/16 in proud at the fourth',
  'needs one more pass with the plane before anything is glued',
  'turned out to be sound for all but the last hand’s breadth',
  'had been moved outward by the width of a washer, and the washer was still there',
  'closes on an even gap now, and stays closed when the floor is walked on',
  'takes a screw, rings when it is struck and reads 11% two inches in',
  'was bagged with its tag, and the bag went to the shelf above the bench',
  'will have to wait for the timber, which is promised for the week after next',
  'agrees with the other side to within what our rule can tell',
  'was tried, marked, taken down and eased, and tried once more before noon',
  'shows two rows of tack holes, the inner one older and closer together',
  'was left clamped overnight with the note not to touch it',
];
const NOTES = [
  'tried in place, eased at the front corner',
  'marked out from the old one, holes carried over',
  'taken down again and cleaned',
  'second fitting, gap read at four places',
  'clamped and left overnight',
  'edges dressed, corners checked against the card',
  'both sides together, so that they match',
  'old fixings drawn, bagged and tagged',
  'filed to the line, then stoned',
  'washed, dried and put away under cloth',
];
