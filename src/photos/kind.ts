// What a file really is, by its first bytes: cameras, phones and messengers write wrong endings.

export type Kind = 'jpeg' | 'png' | 'webp' | 'tiff' | 'gif' | 'avif' | 'heic';

/** Bytes that are enough to tell. */
export const HEAD_BYTES = 512;

/** The kind of picture that a file begins as; nothing when it is none of those. */
export function kindOf(head: Uint8Array): Kind | undefined {
  const text = Buffer.from(head.subarray(0, HEAD_BYTES)).toString('latin1');
  if (text.startsWith('\xff\xd8\xff')) return 'jpeg';
  if (text.startsWith('\x89PNG\r\n\x1a\n')) return 'png';
  if (text.startsWith('RIFF') && text.slice(8, 12) === 'WEBP') return 'webp';
  if (/^(II\*\0|MM\0\*)/.test(text)) return 'tiff';
  if (/^GIF8[79]a/.test(text)) return 'gif';
  return text.slice(4, 8) === 'ftyp' ? boxed(text) : undefined;
}

/** Pictures in boxes (ISO/IEC 23008-12) name what they are compressed by among their brands. */
function boxed(text: string): Kind | undefined {
  const size = Math.min(text.length, Buffer.from(text.slice(0, 4), 'latin1').readUInt32BE(0));
  const brands = [8, ...from(16, size)].map((at) => text.slice(at, at + 4));
  if (brands.some((brand) => /^avi[fs]$/.test(brand))) return 'avif';
  return brands.some((brand) => /^(hei|hev|mif1|msf1)/.test(brand)) ? 'heic' : undefined;
}

function from(start: number, end: number): number[] {
  return Array.from({ length: Math.max(0, Math.floor((end - start) / 4)) }, (_, i) => start + 4 * i);
}
