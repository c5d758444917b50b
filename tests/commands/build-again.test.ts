// A build takes from the last one what hasn't changed: what comes of it is what a build from nothing makes, byte for byte.
import { statSync } from 'node:fs';
import { readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { SMALL } from '../record/small.ts';
import { bytesOf, change, type ProgramCopy, programCopy } from './program-copy.ts';
import { emptyFolderFor } from './run.ts';

const CHOICE = `---
question: Mend the cowl or make it new?
part: cowl
asked: 2025-03-04
options:
  - option: mend
    way: repair
    lines:
      - { do: Mend it, work: metal, hours: [4, 6, 12] }
    can-fail: { chance: 10%, after: 40%, then: new }
  - option: new
    way: new-made
    lines:
      - { buy: Sheet, price: [200, 240, 400], from: millrace }
      - { do: Make it, work: metal, hours: [3, 5, 10] }
---

Two ways.
`;
const DAY = 'log/2025-03-05.md';
const DAY_PAGE = 'day/2025-03-05.html';
const entry = (words: string, time = '2h', photos = ['IMG_1.jpg']) => `---
hours:
  - { part: cowl, line: lead, work: metal, time: ${time} }
measured:
  - { kind: straight, part: cowl, state: before, length: 40 in, offsets: [0 in, 1/8 in, 1/4 in, 1/16 in, 0 in] }
photos:
${photos.map((file) => `  - { file: ${file}, caption: The cowl, alt: The cowl, part: cowl, shows: before }`).join('\n')}
---

${words}
`;
const picture = (red: number) =>
  sharp({ create: { width: 700, height: 500, channels: 3, background: { r: red, g: 90, b: 40 } } })
    .jpeg()
    .toBuffer();

let program: ProgramCopy;
let home: Awaited<ReturnType<typeof emptyFolderFor>>;
const at = (name: string) => join(home.folder, name);

beforeAll(async () => {
  program = await programCopy();
  home = await emptyFolderFor('again');
  await change(at('record'), {
    ...SMALL,
    'parts/sill.md': SMALL['parts/cowl.md'].replace('Cowl', 'Sill'),
    'choices/cowl.md': CHOICE,
    [DAY]: entry('Looked at it.'),
    'log/2025-03-06.md': entry('Went on.', '1h', []).replace('photos:\n\n', ''),
    'photos/2025-03-05/IMG_1.jpg': await picture(20),
  });
});
afterAll(async () => {
  await program?.remove();
  await home?.remove();
});

/** Builds over the last site and from nothing, and holds one against the other; gives the files. */
async function bothWays(words: readonly string[] = []): Promise<Record<string, string>> {
  await program.build(at('record'), at('again'), words);
  const again = await bytesOf(at('again'));
  const [folder, aside] = ['kept', 'kept-aside'].map((name) => join(program.folder, '.cache', name)) as [
    string,
    string,
  ];
  await rename(folder, aside);
  await program.build(at('record'), at('fresh'), words);
  await rm(folder, { recursive: true });
  await rename(aside, folder);
  expect(again).toEqual(await bytesOf(at('fresh')));
  return again;
}

const kept = async () => {
  const folder = join(program.folder, '.cache', 'kept');
  return (await readdir(folder)).map((file) => join(folder, file));
};
const compiled = async () => {
  const folder = join(program.folder, '.cache', 'compiled');
  const [one] = await readdir(folder);
  return join(folder, one ?? '');
};

describe('a build after a change', () => {
  it('makes what a build from nothing makes', async () => {
    const text = (page: string) => readFile(join(at('again'), page), 'utf8');
    await program.build(at('record'), at('again'));
    const first = await bytesOf(at('again'));

    await change(at('record'), {
      [DAY]: entry('Looked at it twice.', '4h 30m', ['IMG_1.jpg', 'IMG_2.jpg']),
      'photos/2025-03-05/IMG_2.jpg': await picture(120),
      'parts/cowl.md': SMALL['parts/cowl.md'].replace('name: Cowl', 'name: The cowl'),
    });
    const second = await bothWays();
    expect(await text('day/2025-03-05.html')).toContain('Looked at it twice.');
    expect(second['costs.html']).not.toBe(first['costs.html']);
    expect(Object.keys(second).length).toBe(Object.keys(first).length + 2);

    await change(at('record'), {
      'log/2025-03-06.md': undefined,
      'log/2025-03-07.md': entry('A new day.', '3h', ['IMG_3.jpg']),
      [DAY]: entry('Looked at it.', '2h', ['IMG_2.jpg']),
      'photos/2025-03-05/IMG_1.jpg': undefined,
      'photos/2025-03-05/IMG_2.jpg': await picture(220),
      'photos/2025-03-07/IMG_3.jpg': await picture(60),
      'parts/sill.md': undefined,
      'choices/cowl.md': CHOICE.replace('price: [200, 240, 400]', 'price: [300, 340, 500]'),
      'shop.md': SMALL['shop.md'].replace('rate: 80', 'rate: 95'),
    });
    const third = await bothWays();
    expect(Object.keys(third)).toContain('day/2025-03-07.html');
    expect(Object.keys(third)).not.toContain('day/2025-03-06.html');
    expect(Object.keys(third)).not.toContain('part/sill.html');
    expect(third['choice/cowl.html']).not.toBe(second['choice/cowl.html']);
    expect(third['day/2025-03-03.html']).not.toBe(second['day/2025-03-03.html']);
  }, 300_000);

  it('makes it for another audience', async () => {
    const history = await bothWays(['--for', 'history']);
    expect(Object.keys(history)).not.toContain('costs.html');
    expect(Object.keys(history)).not.toContain('script/what-if.js');
  }, 300_000);
});

describe('what was kept', () => {
  it.each<[string, (bytes: Buffer) => Buffer]>([
    ['cut', (bytes) => bytes.subarray(0, bytes.length / 2)],
    ['damaged', (bytes) => Buffer.concat([bytes.subarray(0, -9), Buffer.from('x'), bytes.subarray(-8)])],
  ])(
    'is not used when it is %s',
    async (_, spoil) => {
      const right = await bothWays();
      const folders = ['pages/chunks', 'program'].map(async (name) => {
        const folder = join(await compiled(), name);
        return join(folder, (await readdir(folder)).sort()[0] ?? '');
      });
      const files = [...(await kept()), ...(await Promise.all(folders))];
      expect(files.length).toBeGreaterThan(4);
      for (const file of files) await writeFile(file, spoil(await readFile(file)));
      await program.build(at('record'), at('again'));
      expect(await bytesOf(at('again'))).toEqual(right);
    },
    300_000,
  );

  it('is bundled after a build for the next one, which makes the same', async () => {
    const right = await bothWays();
    const sum = join(await compiled(), 'program.sum');
    const bundled = await readFile(sum, 'utf8');
    await rm(sum);
    await program.build(at('record'), at('again'));
    expect(await bytesOf(at('again'))).toEqual(right);
    expect(await readFile(sum, 'utf8')).toBe(bundled);
  }, 300_000);

  it('is right after a build that was killed', async () => {
    await change(at('record'), { [DAY]: entry('Killed in between.', '6h', ['IMG_2.jpg']) });
    let kills = 0;
    for (const after of [300, 700, 1100]) {
      if (await program.killed(at('record'), at('again'), after)) kills += 1;
    }
    expect(kills).toBeGreaterThan(0);
    await bothWays();
    expect(await readFile(join(at('again'), 'day/2025-03-05.html'), 'utf8')).toContain('Killed in between.');
  }, 300_000);

  it('is not used by another program', async () => {
    const page = join(program.folder, 'src', 'site', 'pages', 'search.astro');
    const before = await bytesOf(at('again'));
    await writeFile(page, (await readFile(page, 'utf8')).replace('title="Search"', 'title="Search it"'));
    await program.build(at('record'), at('again'));
    const after = await bytesOf(at('again'));
    expect(Object.keys(after).filter((file) => after[file] !== before[file])).toEqual(['search.html']);
  }, 300_000);
});

describe('a page', () => {
  const files = async () => {
    const pages = (await readdir(at('again'), { recursive: true })).filter((file) => file.endsWith('.html'));
    return new Map(pages.map((file) => [file, statSync(join(at('again'), file)).ino]));
  };
  const others = ['day/2025-03-03.html', 'part/cowl.html', 'lines/part/cowl.html', 'measured/cowl.html'];

  it('stands while nothing that it shows changes', async () => {
    await change(at('record'), {
      [DAY]: entry('Some words.', '2h', ['IMG_9.jpg']),
      'photos/2025-03-05/IMG_9.jpg': await picture(180),
    });
    await program.build(at('record'), at('again'));
    const before = await files();
    await change(at('record'), { [DAY]: entry('Other words, further down.', '2h', ['IMG_9.jpg']) });
    await bothWays();
    const after = await files();
    for (const page of others.filter((page) => !page.startsWith('part')))
      expect(after.get(page), page).toBe(before.get(page));
    // The words of a day stand in the list of days on the page of its part.
    for (const page of ['day/2025-03-05.html', 'part/cowl.html'])
      expect(after.get(page), page).not.toBe(before.get(page));
  }, 200_000);

  it('is drawn anew when a name in it changes', async () => {
    const before = await files();
    await change(at('record'), {
      'parts/cowl.md': SMALL['parts/cowl.md'].replace('name: Cowl', 'name: Scuttle'),
    });
    await bothWays();
    const after = await files();
    for (const page of others) expect(after.get(page), page).not.toBe(before.get(page));
    expect(await readFile(join(at('again'), 'day/2025-03-05.html'), 'utf8')).toContain('Scuttle');
  }, 200_000);

  it('that was changed in the site by hand is put back', async () => {
    const right = await bytesOf(at('again'));
    for (const page of others) await writeFile(join(at('again'), page), 'by hand');
    await rm(join(at('again'), 'day/2025-03-05.html'));
    await program.build(at('record'), at('again'));
    expect(await bytesOf(at('again'))).toEqual(right);
  }, 200_000);
});

describe('pictures', () => {
  const right = async () => ({ ...(await bytesOf(at('again'))) });
  const folder = () => statSync(at('again/pictures')).ino;
  const one = async () => join(at('again/pictures'), (await readdir(at('again/pictures')))[0] ?? '');

  it('stay where they are while they are the same', async () => {
    const [before, pages] = [folder(), await right()];
    await change(at('record'), { [DAY]: entry('Words alone have changed.', '2h', ['IMG_9.jpg']) });
    const after = await bothWays();
    expect(after[DAY_PAGE]).not.toBe(pages[DAY_PAGE]);
    expect(folder()).toBe(before);
  }, 200_000);

  it.each<[string, () => Promise<void>]>([
    ['one was changed by hand', async () => writeFile(await one(), 'by hand')],
    ['one was taken away', async () => rm(await one())],
    ['all were taken away', () => rm(at('again/pictures'), { recursive: true })],
    ['a file of somebody else’s lies there', () => writeFile(at('again/pictures/notes.txt'), 'Mine')],
  ])(
    'are put back when %s',
    async (_, spoil) => {
      const before = await right();
      await spoil();
      expect(await bytesOf(at('again'))).not.toEqual(before);
      await program.build(at('record'), at('again'));
      expect(await bytesOf(at('again'))).toEqual(before);
    },
    200_000,
  );
});
