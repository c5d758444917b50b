// What a web picture carries beside its picture. It must be nothing: no EXIF, XMP, IPTC, place, color profile,
// animation or second picture. Only the chunks that hold the picture itself are let through.

/** The picture, lossy or without loss, its see-through part, and the header that says which are there. */
const OWN = new Set(['VP8 ', 'VP8L', 'ALPH', 'VP8X']);
/** In the header, every bit but that of ALPH promises something carried: profile, EXIF, XMP, animation. */
const ALPHA_BIT = 0x10;

/** Everything that a WebP file carries and shouldn't, by name; empty when it is the bare picture. */
export function carried(file: Uint8Array): string[] {
  const bytes = Buffer.from(file.buffer, file.byteOffset, file.byteLength);
  if (
    bytes.length < 12 ||
    bytes.toString('latin1', 0, 4) !== 'RIFF' ||
    bytes.toString('latin1', 8, 12) !== 'WEBP'
  )
    return ['no WebP picture'];
  const found: string[] = [];
  const end = 8 + bytes.readUInt32LE(4);
  let pictures = 0;
  let at = 12;
  while (at + 8 <= Math.min(end, bytes.length)) {
    const chunk = bytes.toString('latin1', at, at + 4);
    const size = bytes.readUInt32LE(at + 4);
    if (!OWN.has(chunk)) found.push(chunk.trim());
    if (chunk === 'VP8 ' || chunk === 'VP8L') pictures += 1;
    if (chunk === 'VP8X' && ((bytes[at + 8] ?? 0) & ~ALPHA_BIT) !== 0) found.push('VP8X flags');
    at += 8 + size + (size % 2);
  }
  if (pictures !== 1) found.push(`${pictures} pictures`);
  if (at !== end || end !== bytes.length) found.push('bytes beside the picture');
  return found;
}
