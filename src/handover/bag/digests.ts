// Checksums of a stream in one reading, so that memory doesn't grow with the file.
import { createHash, getHashes } from 'node:crypto';
import { createReadStream } from 'node:fs';

/** The sums by algorithm, in hex, and how many octets there were. */
export type Sums<A extends string> = { octets: number; sums: Record<A, string> };

/** Lets octets through and sums them up on the way. */
export function summing<A extends string>(algorithms: readonly A[]) {
  const hashes = algorithms.map((name) => [name, createHash(name)] as const);
  let octets = 0;
  return {
    async *through(source: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
      for await (const some of source) {
        octets += some.length;
        for (const [, hash] of hashes) hash.update(some);
        yield some;
      }
    },
    sums: (): Sums<A> => ({
      octets,
      sums: Object.fromEntries(hashes.map(([name, hash]) => [name, hash.digest('hex')])) as Record<A, string>,
    }),
  };
}

/** The sums of a file. Throws as the disk does when it can't be read. */
export async function sumsOfFile<A extends string>(path: string, algorithms: readonly A[]): Promise<Sums<A>> {
  const { through, sums } = summing(algorithms);
  const reading = through(createReadStream(path, { highWaterMark: 1 << 18 }));
  while (!(await reading.next()).done);
  return sums();
}

/** True of an algorithm by the name that manifests use. */
export function isKnownAlgorithm(name: string): boolean {
  return ['md5', 'sha1', 'sha224', 'sha256', 'sha384', 'sha512'].includes(name) && getHashes().includes(name);
}
