// Puts a printed file in place: over an older print of its kind, never over anything else.
import { readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { besideOf, clearLeft } from './beside.ts';
import { DiskFault, onDisk } from './disk-fault.ts';

/**
 * Why nothing may be printed to a file, before anything is printed; nothing where it may. A PDF is known by its
 * keyword, which the printer writes as plain text into the metadata (XMP, ISO 16684-1; `pdf:Keywords`).
 */
export async function whyNotPrinted(file: string, keyword: string): Promise<string | undefined> {
  const folder = await stat(dirname(file)).catch(() => undefined);
  if (!folder?.isDirectory()) return `There is no folder \`${dirname(file)}\` to print to.`;
  const there = await stat(file).catch(() => undefined);
  if (!there) return undefined;
  const before = there.isFile() ? await readFile(file, 'latin1').catch(() => '') : '';
  if (!before.startsWith('%PDF-')) return `${file} is there already and is no PDF: it stays as it is.`;
  return before.includes(`<pdf:Keywords>${keyword}</pdf:Keywords>`)
    ? undefined
    : `${file} is there already and is another PDF than this command prints: it stays as it is.`;
}

/** Puts a file in place when it is whole; a sentence with the disk's word for what went wrong. */
export async function writePdf(file: string, pdf: Uint8Array): Promise<string | undefined> {
  const writing = besideOf(file);
  try {
    await clearLeft(dirname(file));
    await onDisk(file, async () => {
      await writeFile(writing, pdf);
      await rename(writing, file);
    });
    return undefined;
  } catch (error) {
    await rm(writing, { force: true });
    if (error instanceof DiskFault) return error.message;
    return `${file} can’t be written (${(error as NodeJS.ErrnoException).code ?? 'unknown'}).`;
  }
}
