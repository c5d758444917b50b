import type { Readable } from 'node:stream';

/** Ends when a process has said so many bytes. */
export function said({ stdout }: { readonly stdout: Readable }, bytes: number): Promise<void> {
  let heard = 0;
  return new Promise((done) => {
    stdout.on('data', (chunk: Buffer) => {
      heard += chunk.length;
      if (heard >= bytes) done();
    });
  });
}
