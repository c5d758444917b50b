// Reads a record's folder: its texts, and which pictures are there. What can't be read is a problem, never a throw.
import { type Dirent, lstatSync, readdirSync, realpathSync, type Stats, statSync } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { Problem } from '../record/place.ts';
import type { WrittenFile } from '../record/record.ts';
import { notPictures, notRead } from './not-read.ts';
import { readText } from './read-text.ts';

/** The texts and pictures of a folder, and what couldn't be read. */
export type Folder = { files: WrittenFile[]; photos: string[]; problems: Problem[] };

/** The same while it is read; `beside` lies in photos/ and is no picture. */
type Found = Folder & { beside: string[] };

const PICTURE = /\.(jpe?g|png|webp|tiff?|heic|heif|avif|gif)$/i;

/** Reads one text of a record, given by its path and its name in the record, as the system tells of it. */
export type ReadsText = (path: string, file: string, about: Stats) => WrittenFile | Problem;

/**
 * Reads a folder. Files whose name begins with a dot, and README.md, are not the record's. Who reads it again and again
 * gives a `text` that remembers, from `textsRead()`.
 */
export async function readFolder(
  folder: string,
  text: ReadsText = (path, file, { size }) => readText(path, file, size),
): Promise<Folder> {
  const { beside, ...found } = await foundIn(folder, text);
  found.problems.push(...notPictures(beside));
  return found;
}

async function foundIn(folder: string, text: ReadsText): Promise<Found> {
  const found: Found = { files: [], photos: [], problems: [], beside: [] };
  let root: string;
  try {
    root = await realpath(folder);
    if (!(await stat(root)).isDirectory()) throw new Error('not a folder');
  } catch {
    found.problems.push(
      unreadable('.', `There is no folder \`${folder}\`.`, 'Name the folder that holds car.md.'),
    );
    return found;
  }
  try {
    walk({ root, found, text }, root);
  } catch (error) {
    found.problems.push(closed('.', folder, error));
  }
  return found;
}

/** True when a file is a picture by its ending. */
export function isPicture(name: string): boolean {
  return PICTURE.test(name);
}

type Walk = { root: string; found: Found; text: ReadsText };

/** Takes in a folder by its real path. */
function walk(all: Walk, folder: string): void {
  const { root, found } = all;
  const entries = readdirSync(folder, { withFileTypes: true }).filter(({ name }) => !name.startsWith('.'));
  for (const entry of entries.sort((one, other) => (one.name < other.name ? -1 : 1))) {
    const path = join(folder, entry.name);
    const file = relative(root, path).split(sep).join('/');
    try {
      const wrong = look(all, path, file, entry);
      if (wrong) found.problems.push(unreadable(file, ...wrong));
    } catch (error) {
      found.problems.push(closed(file, file, error));
    }
  }
}

type Wrong = [reason: string, mend: string];

/**
 * Takes in what lies at a path; says why where it isn't read. The system is asked without waiting in turns: of thousands
 * of files the turns would take longer than the answers.
 */
function look({ root, found, text }: Walk, path: string, file: string, entry: Dirent): Wrong | undefined {
  const isLink = entry.isSymbolicLink();
  if (isLink && !within(root, realpathSync(path))) {
    return [
      `\`${file}\` is a link that leads out of the record’s folder, so it isn’t read.`,
      'Put the file itself here.',
    ];
  }
  const about = isLink ? statSync(path) : entry;
  if (about.isDirectory()) {
    if (isLink) {
      return [
        `\`${file}\` is a link to a folder that is read already, so it isn’t read again.`,
        'Take the link out.',
      ];
    }
    if (file.endsWith('.md')) {
      return [`\`${file}\` is a folder, and a text should be here.`, 'Give the folder another name.'];
    }
    walk({ root, found, text }, path);
    return undefined;
  }
  if (!about.isFile()) return [`\`${file}\` is no file that holds text.`, 'Take it out.'];
  if (file === 'README.md') return undefined;
  if (file.endsWith('.md')) {
    const read = text(path, file, isLink ? statSync(path) : lstatSync(path));
    if ('text' in read) found.files.push(read);
    else found.problems.push(read);
    return undefined;
  }
  const inPhotos = file.startsWith('photos/');
  if (inPhotos && isPicture(file)) found.photos.push(file);
  else {
    if (inPhotos) found.beside.push(file);
    found.problems.push(...notRead(file, isPicture(file)));
  }
  return undefined;
}

function within(root: string, path: string): boolean {
  return path === root || path.startsWith(root + sep);
}

/** A file or folder that the system doesn't open. */
function closed(file: string, name: string, error: unknown): Problem {
  const { code } = error as NodeJS.ErrnoException;
  if (code === undefined) throw error;
  return unreadable(file, `\`${name}\` can’t be opened (${code}).`, 'See that it is there and may be read.');
}

function unreadable(file: string, reason: string, mend: string): Problem {
  return { rule: 'file-unreadable', severity: 'error', place: { file, line: 1, column: 1 }, reason, mend };
}
