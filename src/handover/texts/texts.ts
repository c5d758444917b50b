// The record's texts as a hand-over has them: without the keys that a later reader may not see, without comments and
// remarks, and with the names under which the photographs go along. Files that hold nothing for that reader stay behind.
import { isDeepStrictEqual } from 'node:util';
import { namelessFor, writtenFor } from '../../record/audience.ts';
import { splitFrontMatter } from '../../record/front-matter.ts';
import { kindOf } from '../../record/open.ts';
import { photoPath, type WrittenFile } from '../../record/record.ts';
import { reducedFrontMatter } from './front-matter.ts';
import { proseOf } from './prose.ts';
import { withStandIns } from './stand-ins.ts';

type Values = Record<string, unknown>;

/** Takes names that a later reader may not see out of every text of a value. */
type Nameless = <T>(value: T) => T;
type NameOf = (photo: string) => string | undefined;

/** The texts that go along. `nameOf` gives the new path of a photograph by its path in the record. */
export function handedTexts(files: readonly WrittenFile[], nameOf: NameOf): WrittenFile[] {
  const nameless = namelessIn(files);
  return files.flatMap((written) => {
    const kind = kindOf(written.file);
    // The owner's account is the owner's alone.
    if (kind === undefined || kind === 'statement') return [];
    return [{ file: written.file, text: textOf(written, kind, { nameOf, nameless }) }];
  });
}

/** Says “the owner” instead of the owner’s name, as the history’s pages do. */
function namelessIn(files: readonly WrittenFile[]): Nameless {
  const of = (wanted: string) =>
    files
      .filter(({ file }) => kindOf(file) === wanted)
      .map(({ file, text }) => splitFrontMatter(file, text).values);
  const [car = {}] = of('car');
  const [shop = {}] = of('shop');
  return namelessFor('history', { car, shop, parts: of('part') } as Parameters<typeof namelessFor>[1]);
}

function textOf(
  { file, text }: WrittenFile,
  kind: Parameters<typeof writtenFor>[0],
  { nameOf, nameless }: { nameOf: NameOf; nameless: Nameless },
): string {
  const { values, body } = splitFrontMatter(file, text);
  const { kept, stoodIn } = withStandIns(kind, values, writtenFor(kind, values, 'history'));
  const renamed = nameless(withNewNames(kept, file, nameOf));
  // What stands below the shop's own rules is for the shop.
  const prose = kind === 'shop' ? '' : proseOf(file, body.markdown, nameless);
  const handed = `---\n${stoodIn ? HEAD : ''}${reducedFrontMatter(text, renamed)}---\n${prose}`;
  const again = splitFrontMatter(file, handed);
  if (!isDeepStrictEqual(bare(again.values), bare(renamed)))
    throw new Error(`${file} doesn’t read as it was meant once it is made shorter.`);
  return handed;
}

/** Says in the file itself what its noughts are, since a later reader may hold no other. */
const HEAD = '# Amounts and estimates were not handed over: 0 stands where one must be written.\n';

/** Every place that names a photograph: an entry's list and its tags, and the list of a choice. */
function withNewNames(values: Values, file: string, nameOf: NameOf): Values {
  const day = file.slice(file.lastIndexOf('/') + 1).slice(0, 10);
  const renamed = (written: unknown, inDay: boolean) => {
    if (typeof written !== 'string') return written;
    const name = nameOf(inDay ? photoPath(written, day) : written) ?? written;
    return inDay && name.startsWith(`photos/${day}/`) ? name.slice(`photos/${day}/`.length) : name;
  };
  const inLines = (list: unknown, key: string) =>
    Array.isArray(list)
      ? list.map((line: Values) => (key in line ? { ...line, [key]: renamed(line[key], true) } : line))
      : list;
  const { photos, marks } = values;
  const choice = file.startsWith('choices/') && Array.isArray(photos);
  return {
    ...values,
    ...(photos !== undefined && {
      photos: choice ? photos.map((one) => renamed(one, false)) : inLines(photos, 'file'),
    }),
    ...(marks !== undefined && { marks: inLines(marks, 'photo') }),
  };
}

/** Without the places of the lines, which differ between two texts. */
function bare(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(bare);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, one]) => (key === 'place' ? [] : [[key, bare(one)]])),
  );
}
