// Asks with lists that move and narrow while one types.
import type { Readable, Writable } from 'node:stream';
import { autocomplete, autocompleteMultiselect, confirm, isCancel, log, text } from '@clack/prompts';
import { visible } from '../../views/visible.ts';
import { type Asker, inLine, Stopped } from './asker.ts';

export function movingAsker(input: Readable = process.stdin, output: Writable = process.stdout): Asker {
  const streams = { input, output };
  const shown = { maxItems: 8, ...streams };
  return {
    say: (words) => log.message(visible(words), { output }),
    async text({ message, example, initial, needed, check }) {
      return kept(
        await text({
          message: inLine(needed ? message : `${message} (Enter for none)`),
          ...(example ? { placeholder: `such as ${example}` } : {}),
          ...(initial ? { initialValue: initial } : {}),
          defaultValue: '',
          validate: (said = '') =>
            said.trim() === ''
              ? needed
                ? 'This one is needed.'
                : undefined
              : shownWrong(check(said.trim())),
          ...streams,
        }),
      ).trim();
    },
    async pick({ message, offers, initial = offers[0]?.value ?? '' }) {
      const options = offers.map(option);
      return kept(
        await autocomplete<string>({ message: inLine(message), options, initialValue: initial, ...shown }),
      );
    },
    async some({ message, offers }) {
      const options = offers.map(option);
      return kept(
        await autocompleteMultiselect<string>({
          message: inLine(message),
          options,
          required: false,
          ...shown,
        }),
      );
    },
    async yes(message, initial) {
      return kept(await confirm({ message: inLine(message), initialValue: initial, ...streams }));
    },
    close: () => undefined,
  };
}

/** The id leads, since it is what stands in the log and what one types to narrow the list. */
function option({ value, label }: { value: string; label: string }) {
  const shown = inLine(label);
  return value === '' || value === label
    ? { value, label: shown }
    : { value, label: inLine(value), hint: shown };
}

const shownWrong = (wrong: string | undefined) => (wrong === undefined ? undefined : inLine(wrong));

function kept<T>(answer: T): Exclude<T, symbol> {
  if (isCancel(answer)) throw new Stopped();
  return answer as Exclude<T, symbol>;
}
