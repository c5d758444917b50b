// Reads what a request carries, up to a limit: more is refused before it is read, or cut off where it comes unannounced.
import { createWriteStream } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import { Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';

/** Bytes. */
export const MOST = { form: 1_000_000, photo: 60_000_000, code: 1_000 };

/** Too much came, or was going to. */
export class TooLarge extends Error {}

/** The body as text. */
export async function bodyText(request: IncomingMessage, most: number): Promise<string> {
  announced(request, most);
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > most) throw new TooLarge();
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString('utf8');
}

/** Writes the body into a file that isn’t there yet. */
export async function bodyInto(request: IncomingMessage, path: string, most: number): Promise<void> {
  announced(request, most);
  let size = 0;
  const limit = new Transform({
    transform(chunk: Buffer, _, done) {
      size += chunk.length;
      done(size > most ? new TooLarge() : null, chunk);
    },
  });
  await pipeline(request, limit, createWriteStream(path, { flags: 'wx' }));
}

function announced(request: IncomingMessage, most: number): void {
  if (Number(request.headers['content-length'] ?? 0) > most) throw new TooLarge();
}
