import { describe, expect, it } from 'vitest';
import { cameraFacts, takenText } from '../../src/photos/camera-facts.ts';
import { type Exif, exif, short, text } from './exif.ts';
import { exifSegment, jpeg, scene, tiff } from './pictures.ts';

// The tag ids as EXIF has them (CIPA DC-008; exiftool's list of tags gives the same).
const ORIGINAL = 0x9003;
const OFFSET_ORIGINAL = 0x9011;
const PART_ORIGINAL = 0x9291;
const CHANGED = 0x0132;
const DIGITIZED = 0x9004;
const OFFSET = 0x9010;
const TURNED = 0x0112;

const factsOf = async (tags: Exif) => cameraFacts(await jpeg([exifSegment(tags)]));
const TIME = text(ORIGINAL, '2024:03:10 01:30:00');

describe('the time a picture was taken', () => {
  it('has its offset and its part of a second', async () => {
    const tags = [TIME, text(OFFSET_ORIGINAL, '-05:00'), text(PART_ORIGINAL, '25')];
    const { taken = '' } = await factsOf({ shot: tags });
    // Published with the example: exiftool's SubSecDateTimeOriginal.
    expect(taken).toBe('2024-03-10T01:30:00.25-05:00');
    expect(new Date(taken).getTime()).toBe(new Date('2024-03-10T06:30:00.25Z').getTime());
  });

  it('stays local without an offset, never taken as UTC', async () => {
    expect(await factsOf({ shot: [TIME] })).toEqual({ taken: '2024-03-10T01:30:00' });
    const other = [TIME, text(OFFSET, '-05:00')];
    // The offset of another time is not the offset of this one.
    expect(await factsOf({ shot: other })).toEqual({ taken: '2024-03-10T01:30:00' });
  });

  it('isn’t the time at which the file was changed or scanned', async () => {
    const tags = {
      picture: [text(CHANGED, '2025:01:01 00:00:00')],
      shot: [text(DIGITIZED, '2025:01:02 00:00:00')],
    };
    expect(await factsOf(tags)).toEqual({});
  });

  it.each([
    ['0000:00:00 00:00:00', ''],
    ['    :  :     :  :  ', ''],
    ['2025:02:29 10:00:00', ''],
    ['2025:04:16 25:00:00', ''],
    ['not a time', ''],
    ['', '-05:00'],
  ])('is none when the camera wrote `%s`', (time, offset) => {
    expect(takenText(time, offset, '')).toBeUndefined();
  });

  it.each([
    ['+05:45', '2025-04-16T09:30:00+05:45'],
    ['+14:00', '2025-04-16T09:30:00+14:00'],
    ['Z', '2025-04-16T09:30:00Z'],
    ['   :  ', '2025-04-16T09:30:00'],
    ['-5', '2025-04-16T09:30:00'],
    ['+19:00', '2025-04-16T09:30:00'],
  ])('with the offset `%s` reads %s', (offset, taken) => {
    expect(takenText('2025:04:16 09:30:00', offset, '')).toBe(taken);
  });

  it('is read from PNG, WebP and TIFF as well', async () => {
    const dated = () => scene().withExif({ IFD2: { DateTimeOriginal: '2024:03:10 01:30:00' } });
    const pictures = [
      await dated().png().toBuffer(),
      await dated().webp().toBuffer(),
      await tiff({ shot: [TIME] }),
    ];
    expect(pictures.map((picture) => cameraFacts(picture).taken)).toEqual(
      Array(3).fill('2024-03-10T01:30:00'),
    );
  });
});

describe('facts', () => {
  it('say how the camera was held, unless it was upright', async () => {
    expect(await factsOf({ picture: [short(TURNED, 6)] })).toEqual({ turned: 6 });
    expect(await factsOf({ picture: [short(TURNED, 1)] })).toEqual({});
    expect(await factsOf({ picture: [short(TURNED, 9)] })).toEqual({});
  });

  it('are none of a file that holds none, or holds broken ones', async () => {
    expect(cameraFacts(await jpeg())).toEqual({});
    expect(cameraFacts(Buffer.alloc(0))).toEqual({});
    expect(cameraFacts(Buffer.from('not a picture at all'))).toEqual({});
    const broken = Buffer.from(exif({ shot: [TIME] }).fill(0xff, 10));
    expect(
      cameraFacts(await jpeg([Buffer.concat([Buffer.from('\xff\xe1\x00\x40Exif\0\0', 'latin1'), broken])])),
    ).toEqual({});
  });
});
