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
  const name = file.slice(file.lastIndexOf('/') + 1);
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
