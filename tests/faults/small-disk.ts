// A disk with little room. Where this process may mount, it is one of its own in memory, and what is on it is filled up
// to the wanted rest; elsewhere no file may grow past the rest (`ulimit -f`, setrlimit(2)), which the system refuses by
// another word (EFBIG for ENOSPC) and a writer meets at the same calls.
import { execFile } from 'node:child_process';
import { rm, statfs, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';

const call = promisify(execFile);

/** `full` leaves so many octets; `before` is put before a command that is to find it so; `word` is what is said then. */
export type SmallDisk = {
  full: (rest: number) => Promise<{ before: string[]; word: string }>;
  roomy: () => Promise<void>;
  remove: () => Promise<void>;
};

/** Makes a folder a disk of so many octets. */
export async function smallDisk(folder: string, octets: number): Promise<SmallDisk> {
  const mounted = await call('mount', ['-t', 'tmpfs', '-o', `size=${octets}`, 'tmpfs', folder]).then(
    () => true,
    () => false,
  );
  return mounted ? ofItsOwn(folder) : limited();
}

function ofItsOwn(folder: string): SmallDisk {
  const ballast = join(folder, 'ballast');
  const roomy = () => rm(ballast, { force: true });
  return {
    full: async (rest) => {
      await roomy();
      const { bavail, bsize } = await statfs(folder);
      await writeFile(ballast, Buffer.alloc(Math.max(0, bavail * bsize - rest)));
      return { before: [], word: 'the disk is full (ENOSPC). Make room' };
    },
    roomy,
    remove: async () => {
      await call('umount', [folder]);
    },
  };
}

function limited(): SmallDisk {
  const blocks = (rest: number) => String(Math.floor(rest / 1024));
  return {
    full: async (rest) => ({
      before: ['bash', '-c', 'ulimit -f "$0" && exec "$@"', blocks(rest)],
      word: 'no file that large is allowed there (EFBIG). Allow larger files, or name another disk',
    }),
    roomy: async () => undefined,
    remove: async () => undefined,
  };
}
