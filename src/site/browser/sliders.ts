// The sliders of the what-if: their values, and the words that stand beside them and are read aloud.
import { type Control, controlText, type Moved } from '../../views/live/moved.ts';
import type { Sheet } from '../../views/live/sheet.ts';

export type Sliders = {
  /** What stands elsewhere than in the record, by key. */
  moved: () => Map<string, number>;
  /** Puts every slider where `moved` has it, the others where the record has them. */
  set: (moved: Moved) => void;
};

export function slidersOf(section: HTMLElement, controls: readonly Control[], sheet: Sheet): Sliders {
  const sliders = controls.flatMap((control) => {
    const input = section.querySelector<HTMLInputElement>(`[data-move="${CSS.escape(control.key)}"]`);
    return input ? [{ control, input, output: input.parentElement?.querySelector('output') }] : [];
  });
  const say = ({ control, input, output }: (typeof sliders)[number]) => {
    const text = controlText(control, Number(input.value), sheet);
    input.setAttribute('aria-valuetext', text);
    if (output) output.textContent = text;
  };
  for (const slider of sliders) slider.input.addEventListener('input', () => say(slider));
  return {
    moved: () =>
      new Map(
        sliders.flatMap(({ control: { key, value }, input }): [string, number][] =>
          Number(input.value) === value ? [] : [[key, Number(input.value)]],
        ),
      ),
    set: (moved) => {
      for (const slider of sliders) {
        const { key, value } = slider.control;
        slider.input.value = String(moved.get(key) ?? value);
        say(slider);
      }
    },
  };
}
