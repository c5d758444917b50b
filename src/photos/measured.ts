// Reads the head of a camera file alone: whether it is a picture that can be read, and how large it is.
import { open } from 'node:fs/promises';
import { HEAD_BYTES, kindOf } from './kind.ts';
import { MOST_PIXELS, type Verdict } from './verdict.ts';

/** How large a picture is before it is decoded, in pixels; or why it isn't decoded at all. */
export async function measured(camera: Buffer): Promise<{ pixels: number } | Verdict> {
  return unreadKind(camera) ?? size(camera);
}

/** The same of a file that isn't read further than its head. */
export async function measuredFile(path: string): Promise<{ pixels: number } | Verdict> {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
    return unreadKind(buffer.subarray(0, bytesRead)) ?? (await size(path));
  } finally {
    await file.close();
  }
}

function unreadKind(head: Buffer): Verdict | undefined {
  if (head.length === 0) return { why: 'empty' };
  const kind = kindOf(head);
  if (kind === undefined) return { why: 'no-picture' };
  return kind === 'heic' ? { why: 'heic' } : undefined;
}

async function size(camera: Buffer | string): Promise<{ pixels: number } | Verdict> {
  try {
    // Only what makes or measures pictures waits for it: most builds do neither.
    const { default: sharp } = await import('sharp');
    const { width, height } = await sharp(camera, { limitInputPixels: false }).metadata();
    return width * height > MOST_PIXELS ? { why: 'too-large', width, height } : { pixels: width * height };
  } catch {
    return { why: 'unreadable' };
  }
}
