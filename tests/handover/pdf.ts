// Reads a PDF for the tests: its words, as a reader hears them, and every octet that is packed in it.
import { inflateSync } from 'node:zlib';
import { extractText, getDocumentProxy, getMeta } from 'unpdf';

/** The words of all pages in one line, and how many pages there are. */
export async function wordsOf(pdf: Buffer): Promise<{ pages: number; words: string }> {
  const { totalPages, text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), {
    mergePages: true,
  });
  return { pages: totalPages, words: text.replace(/\s+/g, ' ') };
}

/** Title, author and the like. */
export async function aboutOf(pdf: Buffer): Promise<Record<string, unknown>> {
  return (await getMeta(await getDocumentProxy(new Uint8Array(pdf)))).info;
}

/** The file with all its packed streams opened, as text: once as single octets, once as pairs, as PDFs write words. */
export function openedUp(pdf: Buffer): string {
  const parts = [pdf];
  let at = 0;
  for (;;) {
    const begun = pdf.indexOf('stream\n', at);
    if (begun < 0) break;
    at = begun + 'stream\n'.length;
    try {
      parts.push(inflateSync(pdf.subarray(at)));
    } catch {
      // Not every stream is packed: a JPEG stands as it is, and was looked at with the file.
    }
  }
  const octets = Buffer.concat(parts).toString('latin1');
  return octets + octets.replaceAll('\0', '');
}
