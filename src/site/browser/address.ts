// The reader's moves in the address after `#`, so that a moved sheet can be sent on and opened again.
import { type Moved, movedText } from '../../views/live/moved.ts';

/** False where the address names a place on the page, such as `#main`: it says nothing of moves then. */
export function holdsMoves(): boolean {
  return location.hash.length <= 1 || location.hash.includes('=');
}

/** Writes the moves without a new step in the history; with none, takes earlier ones away. */
export function writeMoves(moved: Moved): void {
  const text = movedText(moved);
  if (text === '' && !location.hash.includes('=')) return;
  const hash = text === '' ? '' : `#${text}`;
  if (location.hash === hash) return;
  try {
    history.replaceState(history.state, '', location.href.replace(/#.*/, '') + hash);
  } catch {
    // Some browsers refuse this to a page opened from a folder.
    location.hash = text;
  }
}
