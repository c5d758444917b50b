// Choices: the question, where it stands, who decided and why. No comparison is drawn here.
import type { CarRecord, Choice, Option } from '../record/record.ts';
import { datedText } from './dated.ts';
import { capital, words } from './parts.ts';

/** `decided June 11, 2025: Repair the original`, `open, needed by December 5, 2025`, `withdrawn July 1, 2025`. */
export function choiceState(choice: Choice): string {
  if (choice.withdrawn) return `withdrawn ${datedText(choice.withdrawn.on)}`;
  if (choice.decided) return `decided ${datedText(choice.decided.on)}: ${chosenName(choice)}`;
  return choice['needed-by'] ? `open, needed by ${datedText(choice['needed-by'])}` : 'open';
}

/** The heading of an option: its name, or its id in words. */
export function optionName(option: Option): string {
  return option.name ?? capital(words(option.option));
}

/** What was decided, by whom and why. */
export function decision(choice: Choice): { chosen: string; by: string; reason: string } | undefined {
  const { decided } = choice;
  return (
    decided && {
      chosen: sentence(chosenName(choice)),
      by: sentence(`By ${decided.by}`),
      reason: decided.reason,
    }
  );
}

/** One choice in the list. */
export type ChoiceItem = {
  choice: Choice;
  state: string;
  parts: { id: string; name: string }[];
  options: string[];
  reason: string;
};

/** Open choices first by the day they are needed, then decided and withdrawn, the newest first. */
export function choiceGroups(record: CarRecord): { title: string; none: string; items: ChoiceItem[] }[] {
  const item = (choice: Choice): ChoiceItem => ({
    choice,
    state: choiceState(choice),
    parts: record.parts.filter(({ id }) => choice.part.includes(id)).map(({ id, name }) => ({ id, name })),
    options: choice.options.map(optionName),
    reason: choice.withdrawn?.reason ?? choice.decided?.reason ?? '',
  });
  const sorted = (choices: Choice[], by: (choice: Choice) => string, newest: boolean) =>
    choices.toSorted((a, b) => (by(a) < by(b) ? -1 : by(a) > by(b) ? 1 : 0) * (newest ? -1 : 1)).map(item);
  const { choices } = record;
  const open = choices.filter(({ decided, withdrawn }) => !decided && !withdrawn);
  const done = choices.filter(({ decided, withdrawn }) => decided && !withdrawn);
  const dropped = choices.filter(({ withdrawn }) => withdrawn);
  return [
    {
      title: 'Open',
      none: 'No choice is open.',
      items: sorted(open, (choice) => choice['needed-by'] ?? choice.asked, false),
    },
    { title: 'Decided', none: '', items: sorted(done, ({ decided }) => decided?.on ?? '', true) },
    { title: 'Withdrawn', none: '', items: sorted(dropped, ({ withdrawn }) => withdrawn?.on ?? '', true) },
  ].filter(({ items, none }) => items.length > 0 || none !== '');
}

/** The heading of the option decided on. */
export function chosenName(choice: Choice): string {
  const option = choice.options.find(({ option: id }) => id === choice.decided?.option);
  return option ? optionName(option) : (choice.decided?.option ?? '');
}

/** With one full stop at its end. */
export const sentence = (text: string) => (/[.!?…]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`);
