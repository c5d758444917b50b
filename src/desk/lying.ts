// The record as it lies on the disk now, opened once for every state that it is in.
import { readFolder } from '../disk/folder.ts';
import { dayHere } from '../disk/open-folder.ts';
import { type Opened, openRecord } from '../record/open.ts';
import { sheetsRead } from '../record/read-sheet.ts';
import type { Lying } from '../record/writing/day-plan.ts';
import { signOf } from './sign.ts';

/** `sign` is another for every other state of the record. */
export type Now = { lying: Lying; opened: Opened; sign: string };

/** Reads the folder at every call. `given` holds texts that were shown, by their signs, the latest of them. */
export function recordAt(root: string, clock: () => Date = () => new Date()) {
  const given = new Map<string, string>();
  const read = sheetsRead();
  let last: { sign: string; opened: Opened } | undefined;
  return {
    root,
    /** Reads the record’s texts, each once for as long as it says the same. */
    read,
    async now(): Promise<Now> {
      const { files, photos } = await readFolder(root);
      const lying = { files, photos, today: dayHere(clock()) };
      const sign = signOf(JSON.stringify(lying));
      if (last?.sign !== sign) last = { sign, opened: openRecord({ ...lying, read }) };
      return { lying, opened: last.opened, sign };
    },
    /** Remembers a text that is shown, and gives its sign. */
    give(text: string | undefined): string {
      const sign = signOf(text);
      if (text !== undefined) {
        given.delete(sign);
        given.set(sign, text);
        for (const old of [...given.keys()].slice(0, -MOST)) given.delete(old);
      }
      return sign;
    },
    given: (sign: string) => given.get(sign),
  };
}

/** So many texts are remembered. */
const MOST = 400;
export type RecordAt = ReturnType<typeof recordAt>;
