// What a disk refuses, said in one sentence with its mend: it is full, may not be written to, or a file was taken away
// while it was worked on. None of these is a mistake in the record, and none a fault of the program.

/** A file or folder that the disk didn't take, or no longer has. The message is all that a person need read. */
export class DiskFault extends Error {}

/** By the system's word (POSIX.1-2017, errno.h): what it means for a file that is written, and what mends it. */
const REFUSED: { readonly [code: string]: readonly [why: string, mend: string] } = {
  ENOSPC: ['the disk is full', 'Make room'],
  EDQUOT: ['no more of the disk is allowed', 'Make room'],
  EFBIG: ['no file that large is allowed there', 'Allow larger files, or name another disk'],
  EROFS: ['the disk can only be read', 'See that it may be written to'],
  EACCES: ['it may not be written to', 'See that it may'],
  EPERM: ['it may not be written to', 'See that it may'],
  EIO: ['the disk has a fault', 'See to the disk'],
  ENOTDIR: ['a file stands where a folder should', 'Take the file away, or name another folder'],
  EISDIR: ['a folder stands there', 'Take the folder away, or name another file'],
  ENAMETOOLONG: ['its name is too long', 'Give it a shorter one'],
};

/** Compilers say the system's word in words of their own. */
const FULL = /ENOSPC|no space left on device/i;

/** Runs what writes a file or folder; what the disk refuses of it is thrown as a `DiskFault` that names `path`. */
export async function onDisk<T>(path: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw refused(path, error) ?? error;
  }
}

function refused(path: string, error: unknown): DiskFault | undefined {
  if (!(error instanceof Error) || error instanceof DiskFault) return undefined;
  const code = (error as NodeJS.ErrnoException).code ?? '';
  const known = REFUSED[code] ? code : FULL.test(error.message) ? 'ENOSPC' : '';
  const [why, mend] = REFUSED[known] ?? [];
  if (why === undefined) return undefined;
  return new DiskFault(`${path} can’t be written: ${why} (${known}). ${mend}, and do the same again.`, {
    cause: error,
  });
}

/** The sentence of what the disk did; nothing for a fault of ours. `error` is what was thrown. */
export function diskFaultText(error: unknown): string | undefined {
  if (error instanceof DiskFault) return error.message;
  const { code, path } = error as NodeJS.ErrnoException;
  return code === 'ENOENT' && path !== undefined
    ? `${path} was taken away while it was worked on (ENOENT). Do the same again.`
    : undefined;
}
