// Looks over a record's camera files without making anything, so that a check stays quick: what making found is
// remembered; of a file that is new, the head alone is read.
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { type Problem, sorted } from '../record/place.ts';
import { readKept, verdictOf } from './kept.ts';
import { photoCache } from './make.ts';
import { measuredFile } from './measured.ts';
import { namesOf } from './plan.ts';
import { readSeen, seenContent } from './seen.ts';
import { AT_ONCE, eachInTurn } from './turns.ts';
import { photoProblem, type Verdict } from './verdict.ts';

/** The pictures that can't be shown, or not whole, as far as is known before they are made. */
export async function lookAtPhotos(
  folder: string,
  files: readonly string[],
  cache = photoCache,
): Promise<Problem[]> {
  const seen = await readSeen(cache, folder);
  const problems: Problem[] = [];
  const look = async (file: string): Promise<Verdict | undefined> => {
    const content = seenContent(seen, file, await stat(join(folder, file)));
    const kept = content === undefined ? undefined : await readKept(cache, namesOf(content));
    if (kept) return verdictOf(kept);
    const size = await measuredFile(join(folder, file));
    return 'why' in size ? size : undefined;
  };
  await eachInTurn(files, 2 * AT_ONCE, async (file) => {
    const verdict = await look(file).catch(
      ({ code = 'unknown' }: NodeJS.ErrnoException): Verdict => ({ why: 'unopened', code }),
    );
    if (verdict) problems.push(photoProblem(file, verdict));
  });
  return sorted(problems);
}
