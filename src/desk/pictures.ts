// Pictures that come in at the desk, and small ones of those that lie in the record.
import { mkdir, readFile, realpath } from 'node:fs/promises';
import type { IncomingMessage } from 'node:http';
import { join } from 'node:path';
import { onDisk } from '../disk/disk-fault.ts';
import { isPicture } from '../disk/folder.ts';
import type { Day } from '../figures/days.ts';
import { lookInto } from '../photos/coming-in/collect.ts';
import { copyIn } from '../photos/coming-in/copy-in.ts';
import { planIncoming } from '../photos/coming-in/plan.ts';
import { contentsOf, namesIn } from '../photos/coming-in/present.ts';
import { photoCache } from '../photos/make.ts';
import { maker } from '../photos/maker.ts';
import { contentOf } from '../photos/plan.ts';
import { verdictText } from '../photos/verdict.ts';
import { inWorkFolder } from '../photos/work-folder.ts';
import { photoPath } from '../record/record.ts';
import { bodyInto, MOST } from './body.ts';
import { liesWithin } from './entry-of.ts';
import type { RecordAt } from './lying.ts';

/** A picture that is in the record now: its name as an entry of the day writes it. Else a sentence why not. */
export type CameIn = { file: string } | { refused: string };

/** Puts a picture into the day’s folder, whole, under a name of its own; one that is there already is known again. */
export async function pictureIn(
  at: RecordAt,
  request: IncomingMessage,
  day: Day,
  name: string,
): Promise<CameIn> {
  if (/[/\\\0]/.test(name) || name.startsWith('.') || name.length > 120)
    return { refused: `\`${name}\` is no name of a picture: it may hold no slash and not begin with a dot.` };
  if (!isPicture(name))
    return { refused: `\`${name}\` is no picture by its ending. JPEG, PNG, WebP and TIFF can be read.` };
  const { lying, opened } = await at.now();
  if (!opened.record) return { refused: 'The record can’t be opened; npm run check says why.' };
  const folder = `photos/${day}`;
  if (!(await liesWithin(at.root, `${folder}/${name}`)))
    return { refused: `${folder} leads out of the record, so nothing is put there.` };
  const root = await realpath(at.root);
  const { opened: from } = opened.record.car;
  const photos = join(root, 'photos');
  const takeIn = async (work: string): Promise<CameIn> => {
    await bodyInto(request, join(work, name), MOST.photo);
    const picture = await lookInto(work, name);
    const size = (await readFile(join(work, name))).length;
    const present = {
      byContent: await contentsOf(root, lying.photos, new Set([size]), photoCache),
      namesIn: await namesIn(root),
      opened: from,
      today: lying.today,
    };
    const plan = planIncoming([picture], present, day);
    const failed = await copyIn(work, root, plan, QUIET);
    const [no] = [...plan.refused, ...failed];
    if (no) return { refused: verdictText(name, no.verdict).join(' ') };
    const [known, copy] = [plan.known[0]?.path, plan.copies[0]?.to];
    if (plan.outside.length > 0)
      return {
        refused: `${day} lies before the record opens, or after today, so the picture isn’t taken in.`,
      };
    return { file: asWritten(known ?? copy ?? '', day) };
  };
  return onDisk(photos, () => inWorkFolder(photos, takeIn));
}

const QUIET = { isTTY: false, write: () => true };

/** A name in the day’s folder stands alone, any other with its path. */
function asWritten(path: string, day: Day): string {
  const name = path.slice(path.lastIndexOf('/') + 1);
  return photoPath(name, day) === path ? name : path;
}

/** A small WebP of a picture of the record, with nothing in it but the picture. */
export async function smallPicture(
  root: string,
  path: string,
  cache = photoCache,
): Promise<Buffer | undefined> {
  await mkdir(cache, { recursive: true });
  return inWorkFolder(cache, async (work) => {
    const bytes = await readFile(join(root, path));
    const { names, facts } = await maker({ cache, work })(contentOf(bytes), bytes);
    return facts.refused ? undefined : readFile(join(cache, names.small));
  });
}
