// Takes a file of the last site into the one that is being made, as long as it is the one that was put there.
import { linkSync, statSync } from 'node:fs';

/** What a file is known by: it is another once it is written, whatever its size and times. */
export function signOf(path: string): string {
  const { ino, size, mtimeNs } = statSync(path, { bigint: true });
  return `${ino} ${size} ${mtimeNs}`;
}

/** True while the file at a path is the one that had this sign. */
export function isStill(path: string, sign: string): boolean {
  try {
    return signOf(path) === sign;
  } catch {
    return false;
  }
}

/** Links a file that is still the one it was. The folder it comes from goes away, so none is in both for long. */
export function linked(from: string, to: string, sign: string): boolean {
  try {
    if (!isStill(from, sign)) return false;
    linkSync(from, to);
    return true;
  } catch {
    return false;
  }
}
