// What a reader has moved, and what follows from it, in words: for the eye, for paper and to be read aloud.
import { controlsOf, controlText, type Moved } from './moved.ts';
import { type Sheet, shortName } from './sheet.ts';
import type { OptionFigures } from './sheet-words.ts';

/** `With: an hour at $96.00; Hours: Repair the original 40 h. …`; empty when nothing is moved. `sheet` is the record's. */
export function movedWords(sheet: Sheet, moved: Moved): string {
  const said = controlsOf(sheet).flatMap((control) => {
    const to = moved.get(control.key);
    if (to === undefined) return [];
    const text = controlText(control, to, sheet);
    return [control.is === 'rate' ? `${small(control.label)} at ${text}` : `${control.label} ${text}`];
  });
  return said.length > 0 ? `With: ${said.join('; ')}. All else stands as the record has it.` : '';
}

/** `Expected cost: Repair the original $4,300; Reproduction fender $4,100.` */
export function expectedWords(sheet: Sheet, options: readonly Pick<OptionFigures, 'id' | 'cost'>[]): string {
  return `Expected cost: ${options.map(({ id, cost }) => `${shortName(sheet, id)} ${cost}`).join('; ')}.`;
}

const small = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
