// Asks for the lines of one list until there are no more; a line that a draft left half said is gone on with.
import type { CarRecord } from '../../record/record.ts';
import { isKeys, type Keys, type Value } from '../../record/writing/edit.ts';
import { lineProblems } from '../../record/writing/line-problems.ts';
import { answered, nextQuestion } from '../../record/writing/questions.ts';
import type { Suggested } from '../../record/writing/suggested.ts';
import type { Asker, Offer } from './asker.ts';

/** Where a conversation stands: who is asked, what is known, and what keeps each answer. */
export type Talk = {
  asker: Asker;
  record: CarRecord;
  suggested: Suggested;
  lines: (list: string) => readonly Value[];
  /** Puts a line in at its place; the draft is kept with it. */
  keep: (list: string, at: number, line: Value) => Promise<void>;
};

/** Asks one line to its end, beginning with what is known of it. */
export async function askLine(talk: Talk, list: string, at: number, begun: Keys): Promise<Keys> {
  const { asker, record, suggested } = talk;
  let line = begun;
  const passed = new Set<string>();
  for (;;) {
    const question = nextQuestion(list, line, passed, record, suggested);
    if (!question) return line;
    const { key, says, example, needed, offers, likely } = question;
    const answer =
      offers && offers.length > 0
        ? await asker.pick({
            message: says,
            offers: [...likeliest(offers, likely), ...(needed ? [] : [NONE])],
            ...(likely === undefined ? (needed ? {} : { initial: '' }) : { initial: likely }),
          })
        : offers && !needed
          ? ''
          : await asker.text({
              message: says,
              example,
              needed,
              check: (words) => {
                const read = answered(list, line, key, words, record);
                return 'wrong' in read ? read.wrong : undefined;
              },
            });
    if (answer === '') passed.add(key);
    else {
      const read = answered(list, line, key, answer, record);
      if ('wrong' in read) asker.say(read.wrong);
      else line = read.line;
    }
    await talk.keep(list, at, line);
  }
}

/** Asks lines of a list. `begin` asks what a new line is about, and gives nothing when there are no more. */
export async function askLines(
  talk: Talk,
  list: string,
  begin: (before: Keys | undefined) => Promise<Keys | undefined>,
): Promise<void> {
  const half = talk.lines(list).at(-1);
  if (isKeys(half) && lineProblems(list, half, talk.record).length > 0) {
    await askLine(talk, list, talk.lines(list).length - 1, half);
  }
  for (;;) {
    const last = talk.lines(list).at(-1);
    const begun = await begin(isKeys(last) ? last : undefined);
    if (!begun) return;
    await askLine(talk, list, talk.lines(list).length, begun);
  }
}

const NONE: Offer = { value: '', label: 'none' };

function likeliest(offers: readonly Offer[], likely: string | undefined): Offer[] {
  return [
    ...offers.filter(({ value }) => value === likely),
    ...offers.filter(({ value }) => value !== likely),
  ];
}
