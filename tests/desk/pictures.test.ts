import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { openDesk, smallFolder } from './at-desk.ts';

const TOO_LARGE = 'That is too large: a picture may have 60 MB, a day’s form 1 MB.\n';
const picture = (light: number) =>
  sharp({ create: { width: 60, height: 40, channels: 3, background: { r: light, g: light, b: 90 } } })
    .jpeg()
    .toBuffer();
const path = (name: string, day = '2025-03-03') => `/picture?day=${day}&name=${encodeURIComponent(name)}`;

describe('a picture at the desk', () => {
  it('lies in the day’s folder as it came, never over another, and is known again by what it holds', async () => {
    const folder = await smallFolder();
    const { known } = await openDesk(folder);
    const [one, two] = await Promise.all([picture(40), picture(200)]);
    const bring = async (name: string, body: Buffer) =>
      JSON.parse((await known(path(name), { method: 'POST', body })).text);
    // Two at once, of one name.
    const came = await Promise.all([bring('IMG_1.jpg', one), bring('IMG_1.jpg', two)]);
    expect(came).toEqual([{ file: 'IMG_1.jpg' }, { file: 'IMG_1-2.jpg' }]);
    expect(await bring('other.jpg', one)).toEqual({ file: 'IMG_1.jpg' });
    const day = join(folder, 'photos/2025-03-03');
    expect((await readdir(day)).sort()).toEqual(['IMG_1-2.jpg', 'IMG_1.jpg']);
    expect(await readFile(join(day, 'IMG_1.jpg'))).toEqual(one);
    expect(await readdir(join(folder, 'photos'))).toEqual(['2025-03-03']);
    const small = await known('/picture?day=2025-03-03&file=IMG_1.jpg');
    expect([small.status, small.headers['content-type']]).toEqual([200, 'image/webp']);
  });

  it('of 200 MB is refused before it is read, and cut off where its size isn’t said', async () => {
    const folder = await smallFolder();
    const { known } = await openDesk(folder);
    const declared = await known(path('IMG_1.jpg'), {
      method: 'POST',
      headers: { 'content-length': '200000000' },
      body: '',
    });
    expect([declared.status, declared.text]).toEqual([413, TOO_LARGE]);
    let sent = 0;
    async function* chunks() {
      for (; sent < 200_000_000; sent += 1_000_000) yield new Uint8Array(1_000_000);
    }
    const streamed = await known(path('IMG_1.jpg'), { method: 'POST', body: chunks() });
    expect([streamed.status, streamed.text]).toEqual([413, TOO_LARGE]);
    expect(sent).toBeLessThan(200_000_000);
    expect(await readdir(join(folder, 'photos'))).toEqual([]);
  });

  it.each(['../IMG_1.jpg', '..', '..\\IMG_1.jpg', 'a/../../b.jpg', '/etc/a.jpg', '.hidden.jpg', 'a\0.jpg'])(
    'isn’t taken in under the name %j',
    async (name) => {
      const folder = await smallFolder();
      const { known } = await openDesk(folder);
      const { status, text } = await known(path(name), { method: 'POST', body: await picture(40) });
      expect(status).toBe(422);
      expect(JSON.parse(text).refused).toBe(
        `\`${name}\` is no name of a picture: it may hold no slash and not begin with a dot.`,
      );
      expect((await readdir(folder)).sort()).toEqual(['car.md', 'log', 'parts', 'shop.md']);
    },
  );

  it('that is none is refused with a sentence', async () => {
    const folder = await smallFolder();
    const { known } = await openDesk(folder);
    const said = async (name: string, body: string, day?: string) =>
      JSON.parse((await known(path(name, day), { method: 'POST', body })).text).refused;
    expect(await said('words.jpg', 'Words.')).toContain('`words.jpg` is no picture that can be read here.');
    expect(await said('car.md', '---\n')).toContain('`car.md` is no picture by its ending.');
    expect(await said('empty.jpg', '')).toContain('`empty.jpg` is empty.');
    expect((await known(path('a.jpg', '../../etc'), { method: 'POST', body: 'x' })).status).toBe(404);
    expect(await readdir(join(folder, 'photos'))).toEqual([]);
  });

  it('shows no file that is no picture of the record', async () => {
    const folder = await smallFolder();
    await mkdir(join(folder, 'photos/2025-03-03'), { recursive: true });
    await writeFile(join(folder, 'photos/2025-03-03/notes.txt'), 'Words.');
    const { known } = await openDesk(folder);
    expect((await known('/picture?day=2025-03-03&file=notes.txt')).status).toBe(404);
  });
});
