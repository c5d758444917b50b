// Published pictures and camera times against an independent program: exiftool finds nothing in the one, and reads
// the other as we do.
import { execFile } from 'node:child_process';
import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { cameraFacts } from '../../src/photos/camera-facts.ts';
import { makePhotos } from '../../src/photos/make.ts';
import { publishPhotos } from '../../src/photos/publish.ts';
import { emptyFolder } from '../commands/run.ts';
import { text } from '../photos/exif.ts';
import { exifSegment, jpeg, laden } from '../photos/pictures.ts';
import { recordOf } from '../photos/record-of.ts';

const run = promisify(execFile);
const WHY_NOT = 'NOT RUN: exiftool is not installed here, so nothing independent looked into the pictures';
const installed = await run('exiftool', ['-ver']).then(
  () => true,
  () => false,
);

type Tags = Record<string, unknown> & { SourceFile: string };

/** All tags that exiftool finds in the files of a folder, unknown and embedded ones too, each with its group. */
async function tagsIn(folder: string, ...asked: string[]): Promise<Tags[]> {
  const options = ['-json', '-G1', '-a', '-u', '-U', '-ee', ...asked];
  const { stdout } = await run('exiftool', [...options, folder], { maxBuffer: 1e8 });
  return JSON.parse(stdout) as Tags[];
}

/** Tags that are more than the file's own structure: its name and dates on the disk, its kind and its size. */
function beyondStructure(tags: Tags): string[] {
  const STRUCTURE =
    /^(SourceFile|ExifTool:ExifToolVersion|System:\w+|File:(FileType|FileTypeExtension|MIMEType)|RIFF:(VP8Version|ImageWidth|ImageHeight|HorizontalScale|VerticalScale)|Composite:(ImageSize|Megapixels))$/;
  return Object.keys(tags).filter((name) => !STRUCTURE.test(name));
}

describe('exiftool', () => {
  it('finds no tag but the file’s structure in any published picture of the demo', async (context) => {
    if (!installed) context.skip(WHY_NOT);
    const { record, folder } = await openFolder('content');
    if (!record) throw new Error('the demo record can’t be opened');
    const out = await emptyFolder();
    const { photos } = await makePhotos(folder, record.photos);
    await publishPhotos(photos.values(), out);
    const all = await tagsIn(out);
    expect(all.length).toBe(2 * record.photos.length);
    expect(all.flatMap((tags) => beyondStructure(tags))).toEqual([]);
  });

  it('finds none in those made of files that carry everything, and finds it in the files', async (context) => {
    if (!installed) context.skip(WHY_NOT);
    const making = await recordOf(await laden());
    const { photos } = await making.make();
    const out = await emptyFolder();
    await publishPhotos(photos.values(), out, { cache: making.cache });
    const all = await tagsIn(out);
    expect(all.length).toBe(2 * making.files.length);
    expect(all.flatMap((tags) => beyondStructure(tags))).toEqual([]);

    const before = new Map(
      (await tagsIn(join(making.folder, 'photos'))).map((tags) => [tags.SourceFile.split('/').at(-1), tags]),
    );
    const CARRIED: Record<string, string> = {
      'gps.jpg': 'GPS:GPSLatitude',
      'xmp.jpg': 'XMP-dc:Source',
      'iptc.jpg': 'IPTC:City',
      'maker-note.jpg': 'ExifIFD:MakerNoteUnknownText',
      'thumbnail.jpg': 'IFD1:ThumbnailImage',
      'second-picture.jpg': 'MPImage2:MPImage2',
      'gain-map.jpg': 'XMP-hdrgm:GainMapMax',
      'profile.jpg': 'ICC_Profile:ProfileDescription',
      'png-text.png': 'IFD0:Artist',
      'webp-exif.webp': 'IFD0:Artist',
      'tiff-exif.tif': 'GPS:GPSLatitude',
    };
    for (const [name, tag] of Object.entries(CARRIED)) {
      expect(Object.keys(before.get(name) ?? {}), name).toContain(tag);
    }
    expect(Object.keys(CARRIED).sort()).toEqual((await readdir(join(making.folder, 'photos'))).sort());
  });

  it('reads the time a picture was taken as we do, from the same tags', async (context) => {
    if (!installed) context.skip(WHY_NOT);
    const shot = [text(0x9003, '2024:03:10 01:30:00'), text(0x9011, '-05:00'), text(0x9291, '25')];
    const camera = await jpeg([exifSegment({ shot })]);
    const folder = await emptyFolder();
    await writeFile(join(folder, 'camera.jpg'), camera);
    const [tags] = await tagsIn(folder, '-d', '%Y-%m-%dT%H:%M:%S');
    expect(tags?.['ExifIFD:DateTimeOriginal']).toBe('2024-03-10T01:30:00');
    const [plain] = await tagsIn(folder);
    const theirs = String(plain?.['Composite:SubSecDateTimeOriginal']);
    expect(cameraFacts(camera).taken).toBe(theirs.replace(':', '-').replace(':', '-').replace(' ', 'T'));
    expect(theirs).toBe('2024:03:10 01:30:00.25-05:00');
  });
});
