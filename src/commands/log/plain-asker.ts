// Asks in plain lines, one after the other: nothing moves, nothing is drawn, every offer has its number.
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { nearest } from '../../record/nearest.ts';
import { visible } from '../../views/visible.ts';
import { type Asker, inLine, type Offer, Stopped } from './asker.ts';

/** So many offers are shown; the others can be named. */
const SHOWN = 9;

export function plainAsker(input: Readable = process.stdin, output: Writable = process.stdout): Asker {
  const terminal = 'isTTY' in input && input.isTTY === true;
  const lines = createInterface({ input, output, terminal });
  const waiting: { tell: (line: string) => void; stop: (why: Stopped) => void }[] = [];
  const early: string[] = [];
  let over = false;
  const stop = () => {
    over = true;
    for (const { stop: end } of waiting.splice(0)) end(new Stopped());
  };
  lines.on('line', (line) => {
    const next = waiting.shift();
    if (next) next.tell(line);
    else early.push(line);
  });
  lines.on('close', stop).on('SIGINT', () => lines.close());
  const onEscape = (_: unknown, key?: { name?: string }) => {
    if (key?.name === 'escape') lines.close();
  };
  if (terminal) input.on('keypress', onEscape);
  const say = (text: string) => output.write(`${visible(text)}\n`);
  const ask = async (prompt: string): Promise<string> => {
    output.write(inLine(prompt));
    const known = early.shift();
    if (known !== undefined) return known.trim();
    if (over) throw new Stopped();
    return (await new Promise<string>((tell, end) => waiting.push({ tell, stop: end }))).trim();
  };
  const list = (offers: readonly Offer[]) => {
    for (const [i, { value, label }] of offers.slice(0, SHOWN).entries()) {
      say(`  ${i + 1}. ${inLine(value === '' || value === label ? label : `${value} (${label})`)}`);
    }
    if (offers.length > SHOWN) say(`  and ${offers.length - SHOWN} more, which can be named.`);
  };
  const chosen = (answer: string, offers: readonly Offer[]): string | undefined => {
    const numbered = /^\d+$/.test(answer) ? offers[Number(answer) - 1] : undefined;
    const named = offers.find(({ value, label }) => value === answer || label === answer);
    return (named ?? numbered)?.value;
  };
  const notOffered = (answer: string, offers: readonly Offer[]) => {
    const near = nearest(
      answer,
      offers.map(({ value }) => value),
    );
    say(`\`${answer}\` isn’t among them.${near ? ` Did you mean \`${near}\`?` : ''}`);
  };

  return {
    say,
    async text({ message, example, initial, needed, check }) {
      for (;;) {
        const hint = [
          example && `such as ${example}`,
          initial ? `Enter for ${initial}` : needed ? '' : 'Enter for none',
        ];
        const said = await ask(`${message} (${hint.filter((one) => one).join('; ')}): `);
        const answer = said === '' ? (initial ?? '') : said;
        if (answer === '' && !needed) return '';
        const wrong = answer === '' ? 'This one is needed.' : check(answer);
        if (wrong === undefined) return answer;
        say(wrong);
      }
    },
    async pick({ message, offers, initial = offers[0]?.value ?? '' }) {
      for (;;) {
        say(message);
        list(offers);
        const first = offers.find(({ value }) => value === initial);
        const answer = await ask(
          `Number or name (Enter for ${first?.value || first?.label || 'the first'}): `,
        );
        if (answer === '') return initial;
        const value = chosen(answer, offers);
        if (value !== undefined) return value;
        notOffered(answer, offers);
      }
    },
    async some({ message, offers }) {
      for (;;) {
        say(message);
        list(offers);
        const answers = (await ask('Numbers or names, with spaces between (Enter for none): ')).split(
          /[\s,]+/,
        );
        const wrong = answers.find((one) => one !== '' && chosen(one, offers) === undefined);
        if (wrong === undefined)
          return answers.flatMap((one) => (one === '' ? [] : (chosen(one, offers) ?? [])));
        notOffered(wrong, offers);
      }
    },
    async yes(message, initial) {
      for (;;) {
        const answer = (await ask(`${message} (${initial ? 'Y/n' : 'y/N'}): `)).toLowerCase();
        if (answer === '') return initial;
        if (/^(y|yes|n|no)$/.test(answer)) return answer.startsWith('y');
        say('Answer `y` or `n`.');
      }
    },
    close() {
      input.off('keypress', onEscape);
      lines.close();
    },
  };
}
