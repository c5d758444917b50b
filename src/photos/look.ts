// Looks over a record's camera files without making anything, so that a check stays quick: what making found is
// remembered; of a file that is new, the head alone is read.
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { type Problem, sorted } from '../record/place.ts';
import { readKept, verdictOf } from './kept.ts';
import { type Known, LOOKED_UP_AT_ONCE, photoCache } from './make.ts';
import { measuredFile } from './measured.ts';
import { namesOf } from './plan.ts';
import { readSeen, seenContent, sight } from './seen.ts';
import { eachInTurn } from './turns.ts';
import { photoProblem, type Verdict } from './verdict.ts';

/** The camera files that nothing has to be made of, with what was made. */
export type KnownPhotos = ReadonlyMap<string, Known>;

/** The pictures that can't be shown, or not whole, as far as is known before they are made. */
export async function lookAtPhotos(
  folder: string,
  files: readonly string[],
  cache = photoCache,
): Promise<Problem[]> {
  return (await lookUpPhotos(folder, files, cache)).problems;
}

/** The same, with what was made of those that it was made of. */
export async function lookUpPhotos(
  folder: string,
  files: readonly string[],
  cache = photoCache,
): Promise<{ problems: Problem[]; known: KnownPhotos }> {
  const seen = await readSeen(cache, folder);
  const problems: Problem[] = [];
  const known = new Map<string, Known>();
  const look = async (file: string): Promise<Verdict | undefined> => {
    // Without waiting in turns: of thousands of files the turns would take longer than the answers.
    const stats = statSync(join(folder, file));
    const content = seenContent(seen, file, stats);
    if (content !== undefined) {
      const names = namesOf(content);
      const facts = readKept(cache, names);
      if (facts) {
        known.set(file, { sight: sight(stats, content), names, facts });
        return verdictOf(facts);
      }
    }
    const size = await measuredFile(join(folder, file));
    return 'why' in size ? size : undefined;
  };
  await eachInTurn(files, LOOKED_UP_AT_ONCE, async (file) => {
    const verdict = await look(file).catch(
      ({ code = 'unknown' }: NodeJS.ErrnoException): Verdict => ({ why: 'unopened', code }),
    );
    if (verdict) problems.push(photoProblem(file, verdict));
  });
  return { problems: sorted(problems), known };
}
