// Files that lie where a record's texts and pictures lie, and are neither: they aren't read, and that is said.
import type { Problem } from '../record/place.ts';

/** Endings that mean Markdown to other programs. */
const MARKDOWN = /\.(?:md|markdown|mdown|mkdn?|mdtxt|mdtext|md\.txt)$/i;
const OF_THE_RECORD = /^(?:log|parts|choices|statements)\//i;
/** What editors and systems leave behind. */
const LEFT_BEHIND = /~$|^#.*#$|^(?:Thumbs\.db|desktop\.ini|Icon\r)$/i;

/** The problem of a file that isn't read, where a writer would think that it is. */
export function notRead(file: string, picture: boolean): Problem[] {
  const about = { rule: 'file-name', place: { file, line: 1, column: 1 } } as const;
  const name = nameOf(file);
  if (MARKDOWN.test(name)) {
    const right = `${file.replace(MARKDOWN, '')}.md`;
    return [
      {
        ...about,
        severity: 'error',
        reason: `\`${file}\` isn’t read: a text of a record ends in \`.md\`, in lower case.`,
        mend: `Name it \`${right}\`.`,
      },
    ];
  }
  if (picture) {
    return [
      {
        ...about,
        severity: 'warning',
        reason: `\`${file}\` is a picture outside of photos/, so it isn’t shown.`,
        mend: 'Bring it in with `npm run photos`, or put it into the folder of its day.',
      },
    ];
  }
  if (!OF_THE_RECORD.test(file) || LEFT_BEHIND.test(name)) return [];
  return [
    {
      ...about,
      severity: 'warning',
      reason: `\`${file}\` isn’t read: it is no text that ends in \`.md\`.`,
      mend: 'Write its words into an entry, or keep it in another folder.',
    },
  ];
}

/**
 * The problems of files in photos/ that aren't pictures by their ending: one for each folder, at its first such file. What
 * systems leave behind isn't told; a text is told elsewhere.
 */
export function notPictures(files: readonly string[]): Problem[] {
  const told = files.filter((file) => !LEFT_BEHIND.test(nameOf(file)) && !MARKDOWN.test(file));
  return [...Map.groupBy(told, folderOf)].flatMap(([folder, [first, ...others]]) => {
    if (first === undefined) return [];
    const names = [first, ...others].map((file) => `\`${nameOf(file)}\``);
    const more = names.length - NAMED;
    return {
      rule: 'not-a-picture',
      severity: 'warning',
      place: { file: first, line: 1, column: 1 },
      reason:
        others.length === 0
          ? `\`${first}\` isn’t shown: it is no picture that can be read here.`
          : `${names.length} files in \`${folder}\` aren’t shown: ${names.slice(0, NAMED).join(', ')}${more > 0 ? ` and ${more} more` : ''} are no pictures that can be read here.`,
      mend: `Keep ${others.length === 0 ? 'it' : 'them'} outside of photos/; a still of a film, or a copy of another kind of picture, can go in as JPEG.`,
    };
  });
}

/** So many files of a folder are named. */
const NAMED = 3;

const nameOf = (file: string) => file.slice(file.lastIndexOf('/') + 1);
const folderOf = (file: string) => file.slice(0, file.lastIndexOf('/') + 1);
