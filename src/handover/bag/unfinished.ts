// What has been written of a bag that isn't finished yet, kept in the bag itself, so that a hand-over that was
// interrupted goes on where it stopped. A line that was cut off by the interruption counts as not written.
import { appendFile, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { onDisk } from '../../disk/disk-fault.ts';
import type { Listed } from './form.ts';

export const UNFINISHED = 'UNFINISHED.txt';

/** Where a file lies while it is being written; what an interruption left there is taken away. */
export const writingName = (number: number) => `.writing-${number}`;
export const WRITING = /^\.writing-\d+$/;

const WORDS =
  'This hand-over isn’t finished, and this file goes away when it is. Give the same command again, and it goes on.';

/** `own` are all paths ever begun; `done` the finished ones, with what they were made from. */
export type Unfinished = { identifier: string; own: Set<string>; done: Map<string, Done> };
export type Done = { key: string; listed: Listed };

/** What stands in the folder's file; nothing when there is none. */
export async function readUnfinished(folder: string): Promise<Unfinished | undefined> {
  const text = await readFile(join(folder, UNFINISHED), 'utf8').catch(() => undefined);
  if (text === undefined) return undefined;
  const found: Unfinished = { identifier: '', own: new Set(), done: new Map() };
  for (const line of text.split('\n').slice(1)) {
    const note = noteOf(line);
    if (!note) continue;
    if ('identifier' in note) found.identifier = note.identifier;
    else if ('done' in note) found.done.set(note.done.listed.path, note.done);
    else {
      found.own.add(note.begun);
      found.done.delete(note.begun);
    }
  }
  return found;
}

type Note = { identifier: string } | { begun: string } | { done: Done };

function noteOf(line: string): Note | undefined {
  try {
    return JSON.parse(line) as Note;
  } catch {
    return undefined;
  }
}

/**
 * Adds notes to the folder's file, one after the other. It goes on with what was left off; with `first` it is begun anew
 * with these, whole: a file that doesn't say whose the folder is would shut out the next hand-over.
 */
export async function notes(folder: string, first?: Note[]): Promise<(...more: Note[]) => Promise<void>> {
  const path = join(folder, UNFINISHED);
  const beside = join(folder, writingName(0));
  await onDisk(path, async () => {
    // The last line may have been cut off: the next one mustn't go on in it.
    if (!first) return appendFile(path, '\n');
    await writeFile(beside, `${WORDS}\n${linesOf(first)}`);
    await rename(beside, path);
  });
  let last: Promise<void> = Promise.resolve();
  return (...more) => {
    last = last.then(() => onDisk(path, () => appendFile(path, linesOf(more))));
    return last;
  };
}

const linesOf = (notes: Note[]) => notes.map((note) => `${JSON.stringify(note)}\n`).join('');
