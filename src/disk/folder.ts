// Reads a record's folder: its texts, and which pictures are there. What can't be read is a problem, never a throw.
import { lstat, readdir, readFile, realpath, stat } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { Problem } from '../record/place.ts';
import type { WrittenFile } from '../record/record.ts';

/** The texts and pictures of a folder, and what couldn't be read. */
export type Folder = { files: WrittenFile[]; photos: string[]; problems: Problem[] };

const MOST_BYTES = 1_000_000;
const PICTURE = /\.(jpe?g|png|webp|tiff?|heic|heif|avif|gif)$/i;

/** Reads a folder. Files whose name begins with a dot, and README.md, are not the record's. */
export async function readFolder(folder: string): Promise<Folder> {
  const found: Folder = { files: [], photos: [], problems: [] };
  let root: string;
  try {
    root = await realpath(folder);
    if (!(await stat(root)).isDirectory()) throw new Error('not a folder');
  } catch {
    found.problems.push(
      problem('.', `There is no folder \`${folder}\`.`, 'Name the folder that holds car.md.'),
    );
    return found;
  }
  await walk(root, root, found);
  return found;
}

/** True when a file is a picture by its ending. */
export function isPicture(name: string): boolean {
  return PICTURE.test(name);
}

async function walk(root: string, folder: string, found: Folder): Promise<void> {
  const names = (await readdir(folder)).filter((name) => !name.startsWith('.')).sort();
  for (const name of names) {
    const path = join(folder, name);
    const file = relative(root, path).split(sep).join('/');
    try {
      if ((await lstat(path)).isSymbolicLink() && !within(root, await realpath(path))) {
        found.problems.push(
          problem(
            file,
            `\`${file}\` is a link that leads out of the record’s folder, so it isn’t read.`,
            'Put the file itself here.',
          ),
        );
        continue;
      }
      const about = await stat(path);
      if (about.isDirectory() && (await realpath(path)) !== path) {
        found.problems.push(
          problem(
            file,
            `\`${file}\` is a link to a folder that is read already, so it isn’t read again.`,
            'Take the link out.',
          ),
        );
        continue;
      }
      if (about.isDirectory() && name.endsWith('.md')) {
        found.problems.push(
          problem(
            file,
            `\`${file}\` is a folder, and a text should be here.`,
            'Give the folder another name.',
          ),
        );
      } else if (about.isDirectory()) await walk(root, path, found);
      else if (!about.isFile()) {
        found.problems.push(problem(file, `\`${file}\` is no file that holds text.`, 'Take it out.'));
      } else if (isPicture(name)) {
        if (file.startsWith('photos/')) found.photos.push(file);
      } else if (name.endsWith('.md') && file !== 'README.md') await readText(path, file, about.size, found);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code ?? 'unknown';
      found.problems.push(
        problem(file, `\`${file}\` can’t be opened (${code}).`, 'See that it is there and may be read.'),
      );
    }
  }
}

async function readText(path: string, file: string, size: number, found: Folder): Promise<void> {
  if (size > MOST_BYTES) {
    found.problems.push(
      problem(
        file,
        `\`${file}\` is ${(size / 1e6).toFixed(1)} MB: too large for a day’s words, so it isn’t read.`,
        'Keep pictures in photos/, and split the text into days (1 MB at most).',
      ),
    );
    return;
  }
  const bytes = await readFile(path);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    found.problems.push(problem(file, `\`${file}\` isn’t UTF-8 text.`, 'Save it again as UTF-8.'));
    return;
  }
  const nul = text.indexOf('\0');
  if (nul >= 0) {
    const lines = text.slice(0, nul).split('\n');
    found.problems.push({
      ...problem(
        file,
        `\`${file}\` holds a NUL byte, which no text has.`,
        'Take it out, or write the line again.',
      ),
      place: { file, line: lines.length, column: (lines.at(-1) ?? '').length + 1 },
    });
    return;
  }
  found.files.push({ file, text });
}

function within(root: string, path: string): boolean {
  return path === root || path.startsWith(root + sep);
}

function problem(file: string, reason: string, mend: string): Problem {
  return { rule: 'file-unreadable', severity: 'error', place: { file, line: 1, column: 1 }, reason, mend };
}
