// Prints a choice for the owner, from the same words and figures as its page.
import { printPictures } from '../photos/for-print.ts';
import { makePhotos } from '../photos/make.ts';
import { forAudience } from '../record/audience.ts';
import { didYouMean } from '../record/nearest.ts';
import type { CarRecord } from '../record/record.ts';
import { rollUp } from '../rollup/roll-up.ts';
import { type ChoicePaper, choicePaper } from '../views/choice-paper.ts';
import { asJpeg, type Press, type Printed, typeset } from './typeset.ts';

/** The record whole, as it lies in its folder; `cache` is where its web pictures are kept, unless in the usual place. */
export type Source = { whole: CarRecord; folder: string; cache?: string };

/** The choice in print, or why there is none. What the owner may not see is gone before anything is worked out. */
export async function printChoice(
  { whole, folder, cache }: Source,
  id: string,
  press: Omit<Press, 'units'>,
): Promise<{ printed: Printed; refused?: never } | { refused: string; printed?: never }> {
  const record = forAudience(whole, 'owner');
  const choice = record.choices.find((one) => one.id === id);
  if (!choice) return { refused: noSuchChoice(id, record) };
  const { photos } = await makePhotos(folder, record.photos, cache === undefined ? {} : { cache });
  const paper = choicePaper(choice, record, rollUp(record), photos);
  const pictures = await printPictures(
    paper.shots.map(({ file }) => file),
    cache,
  );
  return { printed: await setChoice(paper, pictures, { ...press, units: record.units }) };
}

/** Sets a choice in type. `pictures` are JPEGs by the `file` of its pictures. */
export function setChoice(
  paper: ChoicePaper,
  pictures: ReadonlyMap<string, Uint8Array>,
  press: Press,
): Promise<Printed> {
  const data = { ...paper, shots: paper.shots.map((shot) => ({ ...shot, file: asJpeg(shot.file) })) };
  const jpegs = new Map([...pictures].map(([name, bytes]) => [asJpeg(name), bytes]));
  return typeset('choice', data, jpegs, press);
}

function noSuchChoice(id: string, { choices }: CarRecord): string {
  const ids = choices.map((one) => one.id);
  const which =
    didYouMean(id, ids) ??
    (ids.length === 0
      ? 'The record has none yet.'
      : `There are ${ids.map((one) => `\`${one}\``).join(', ')}.`);
  return `There is no choice \`${id}\`. ${which}`;
}
