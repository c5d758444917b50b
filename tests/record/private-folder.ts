// The private record on a disk, with pictures that say in every way a camera knows who took them and where.
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { npmRun } from '../commands/run.ts';
import { CAMERA_WORD, PRIVATE, PRIVATE_PHOTOS } from './private.ts';

/** Writes it into a folder, with one issued statement; `more` are further texts, `photos` further pictures. */
export async function writePrivate(
  folder: string,
  { more = {}, photos = [] }: { more?: Record<string, string>; photos?: readonly string[] } = {},
): Promise<void> {
  const write = async (file: string, what: string | Buffer) => {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), what);
  };
  for (const [file, text] of Object.entries({ ...PRIVATE, ...more })) await write(file, text);
  for (const file of [...PRIVATE_PHOTOS, ...photos]) await write(file, await fromACamera());
  const issued = await npmRun('statement', ['--to', '2025-03-31', '--issue'], folder);
  if (issued.code !== 0) throw new Error(issued.out + issued.err);
}

/** A picture that says in its EXIF and in its XMP who took it and where. */
function fromACamera(): Promise<Buffer> {
  return sharp({ create: { width: 1600, height: 1200, channels: 3, background: '#7f9887' } })
    .withExif({
      IFD0: { Artist: `${CAMERA_WORD} artist`, ImageDescription: `${CAMERA_WORD} described` },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' },
    })
    .withXmp(
      `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description>${CAMERA_WORD} place</rdf:Description></rdf:RDF></x:xmpmeta>`,
    )
    .jpeg()
    .toBuffer();
}
