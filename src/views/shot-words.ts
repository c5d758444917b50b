// The words that stand with a picture: how many there are, and the day it was taken.
import { type Day, shortDayText } from '../figures/days.ts';
import { datedText } from './dated.ts';
import { capital } from './parts.ts';
import type { Shot } from './photos.ts';

/** `1 photograph`, `8 photographs`. */
export function photographs(count: number): string {
  return count === 1 ? '1 photograph' : `${count} photographs`;
}

/** `8 photographs, 7 days`. */
export function photographsOnDays(shots: readonly Shot[]): string {
  const days = new Set(shots.map(takenOn)).size;
  return `${photographs(shots.length)}, ${days === 1 ? '1 day' : `${days} days`}`;
}

/** The day that the camera says, or that of the entry. */
export function takenOn({ when }: Shot): Day {
  return when.slice(0, 10);
}

/**
 * The day under a picture: `April 14`, or `April 14, in the entry of April 16`. The year stands where it isn't the
 * entry's own, and everywhere when `dated`.
 */
export function takenText(shot: Shot, dated = false): string {
  const on = takenOn(shot);
  if (on === shot.day) return dated ? datedText(on) : shortDayText(on);
  const near = !dated && on.slice(0, 4) === shot.day.slice(0, 4);
  return near
    ? `${shortDayText(on)}, in the entry of ${shortDayText(shot.day)}`
    : `${datedText(on)}, in the entry of ${datedText(shot.day)}`;
}

/** The caption with what the picture shows before it; plainly none where the writer gave none. */
export function captionText({ caption, shows }: Shot): string {
  return `${shows ? `${capital(shows)}. ` : ''}${caption || NO_WORDS}`;
}

export const NO_WORDS = 'No words yet.';
