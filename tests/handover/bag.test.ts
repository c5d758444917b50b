import { execSync, spawn } from 'node:child_process';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { coverSum } from '../../src/handover/bag/cover-sum.ts';
import { type OpenBag, openBag, type Payload } from '../../src/handover/bag.ts';
import { checkBag } from '../../src/handover/bag-check.ts';
import { emptyFolder } from '../commands/run.ts';
import { contentOf, folderOf, HELLO_SHA512, minimal, sha, sumsAgree } from './bags.ts';

const CAR = 'Aldermere Fourteen, 14/1187';

async function* octets(text: string) {
  yield Buffer.from(text);
}

const file = (path: string, text: string): Payload => ({ path, key: text, content: () => octets(text) });

async function filled(folder: string, ...files: Payload[]): Promise<OpenBag> {
  const bag = await openBag(folder, CAR);
  for (const one of files) await bag.put(one);
  return bag;
}

const lines = async (folder: string, name: string) =>
  (await readFile(join(folder, name), 'utf8')).split('\n').filter((line) => line !== '');

describe('a bag', () => {
  it('is in the form of the smallest bag of the standard’s conformance suite', async () => {
    const folder = await emptyFolder();
    const bag = await filled(folder, file('hello.txt', 'hello\n'));
    await bag.close({ info: [['Bagging-Date', '2026-05-29']] });
    // F1: conformance suite v1.0/valid/basicBag, checked with sha512sum; the count is octets and files (RFC 8493, 2.2.2).
    expect(await lines(folder, 'manifest-sha512.txt')).toEqual([`${HELLO_SHA512}  data/hello.txt`]);
    expect(await readFile(join(folder, 'bagit.txt'), 'utf8')).toBe(minimal()['bagit.txt']);
    expect(await lines(folder, 'bag-info.txt')).toContain('Payload-Oxum: 6.1');
    expect(await lines(folder, 'bag-info.txt')).toContain('Bagging-Date: 2026-05-29');
  });

  it('has the checksums of FIPS 180-4', async () => {
    const folder = await emptyFolder();
    const bag = await filled(folder, file('abc', 'abc'), file('empty', ''), file('hello', 'hello\n'));
    await bag.close({ info: [] });
    // F4: `abc` from FIPS 180-4; the others begin and end as coreutils says.
    const [abc = '', empty = '', hello = ''] = await lines(folder, 'manifest-sha256.txt');
    expect(abc).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  data/abc');
    expect(empty).toMatch(/^e3b0c442[0-9a-f]{48}7852b855 {2}data\/empty$/);
    expect(hello).toMatch(/^5891b5b5[0-9a-f]{52}be03 {2}data\/hello$/);
  });

  it('is accepted by sha256sum, by sha512sum and by the check', async () => {
    const folder = await emptyFolder();
    const bag = await filled(
      folder,
      file('photos/with a space.jpg', 'one'),
      file('photos/häkchen.jpg', 'two'),
      file('record/log/2025-04-16.md', 'three'),
    );
    await bag.close({
      info: [['Source-Organization', 'Harrow Bend Coachworks']],
      more: { 'START-HERE.html': '<p>' },
    });
    for (const algorithm of ['sha256', 'sha512'] as const) {
      expect(await sumsAgree(folder, algorithm)).toBe(0);
      expect(await sumsAgree(folder, algorithm, 'tagmanifest')).toBe(0);
    }
    expect(await checkBag(folder)).toMatchObject({ faults: [], notes: [], files: 3, octets: 11 });
    // All tag files but the tag manifests themselves (RFC 8493, 2.2.1).
    expect((await lines(folder, 'tagmanifest-sha256.txt')).map((line) => line.slice(66))).toEqual([
      'START-HERE.html',
      'bag-info.txt',
      'bagit.txt',
      'manifest-sha256.txt',
      'manifest-sha512.txt',
    ]);
  });

  it('percent-encodes CR, LF and % in paths, and nothing else', async () => {
    const folder = await emptyFolder();
    const bag = await filled(folder, file('50% done: #1.txt', 'a'), file('two\nlines\r.txt', 'b'));
    await bag.close({ info: [] });
    // RFC 8493, 2.1.3.
    expect((await lines(folder, 'manifest-sha256.txt')).map((line) => line.slice(66))).toEqual([
      'data/50%25 done: #1.txt',
      'data/two%0Alines%0D.txt',
    ]);
    expect((await checkBag(folder)).faults).toEqual([]);
  });

  it('gives one sum for all files but the book, which a shell gives too', async () => {
    const folder = await emptyFolder();
    const bag = await filled(folder, file('record/b', 'two'), file('record/a', 'one'));
    const sum = coverSum(bag.listed());
    await bag.put(file('book/book.pdf', sum));
    expect(coverSum(bag.listed())).toBe(sum);
    await bag.close({ info: [['Sum-On-Cover', sum]] });
    const command = "grep -v '  data/book/' manifest-sha256.txt | sha256sum";
    expect(execSync(command, { cwd: folder, encoding: 'utf8' })).toBe(`${sum}  -\n`);
    expect((await checkBag(folder)).faults).toEqual([]);
  });

  it('has another sum for the cover as soon as a manifest is another', async () => {
    const folder = await emptyFolder();
    const bag = await filled(folder, file('a', 'one'));
    await bag.close({ info: [['Sum-On-Cover', '0'.repeat(64)]] });
    const { faults } = await checkBag(folder);
    expect(faults).toMatchObject([{ what: 'form', file: 'bag-info.txt' }]);
    expect(faults[0]?.says).toMatch(/^Sum-On-Cover says 0{64}, and the files listed come to [0-9a-f]{64}$/);
  });

  it('refuses two names that are one on some disks, and a path that leads out', async () => {
    const bag = await filled(await emptyFolder(), file('IMG_1.jpg', 'a'), file('caf\u00e9.txt', 'b'));
    await expect(bag.put(file('img_1.JPG', 'c'))).rejects.toThrow('`img_1.JPG` and `IMG_1.jpg` are one name');
    await expect(bag.put(file('cafe\u0301.txt', 'd'))).rejects.toThrow('are one name to many disks');
    await expect(bag.put(file('../out.txt', 'e'))).rejects.toThrow('it leads out of the folder');
  });

  it('takes memory for the lines of its manifests, not for its files', async () => {
    const folder = await emptyFolder();
    const some = Buffer.alloc(1 << 20, 'x');
    async function* large() {
      for (let i = 0; i < 400; i++) yield some;
    }
    const bag = await openBag(folder, CAR);
    const before = process.memoryUsage().rss;
    let most = 0;
    const watch = setInterval(() => {
      most = Math.max(most, process.memoryUsage().rss - before);
    }, 5);
    await bag.put({ path: 'large', key: '1', content: large });
    clearInterval(watch);
    // 400 MB went through.
    expect(bag.listed()[0]?.octets).toBe(400 << 20);
    expect(most).toBeLessThan(100 << 20);
  });
});

describe('the folder of a bag', () => {
  it('must be empty or its own', async () => {
    const strangers = await folderOf({ 'letter.txt': 'Dear all' });
    await expect(openBag(strangers, CAR)).rejects.toThrow(/isn’t empty/);
    expect(await contentOf(strangers)).toEqual({ 'letter.txt': sha('sha256', 'Dear all') });
    await expect(openBag(join(strangers, 'letter.txt'), CAR)).rejects.toThrow(/isn’t a folder/);
    const other = await folderOf(minimal());
    await expect(openBag(other, CAR)).rejects.toThrow(/isn’t empty/);
    expect((await checkBag(other)).faults).toEqual([]);
  });

  it('may hold a finished hand-over of the same car, and nothing that was put beside it', async () => {
    const folder = await emptyFolder();
    await (await filled(folder, file('old', 'a'), file('same', 'b'))).close({
      info: [],
      more: { 'NOTE.txt': 'n' },
    });
    await expect(openBag(folder, 'Another car')).rejects.toThrow(
      `holds a hand-over of ${CAR}, not of Another car`,
    );
    await writeFile(join(folder, 'data', 'mine.txt'), 'mine');
    await expect(openBag(folder, CAR)).rejects.toThrow(/mine\.txt wasn’t put there by a hand-over/);
    expect((await checkBag(folder)).faults).toContainEqual({
      what: 'extra',
      file: 'data/mine.txt',
      says: 'no manifest lists it',
    });
    await rm(join(folder, 'data', 'mine.txt'));
    await (await filled(folder, file('new', 'c'), file('same', 'b'))).close({ info: [] });
    expect(Object.keys(await contentOf(folder))).not.toContain('data/old');
    expect(Object.keys(await contentOf(folder))).not.toContain('NOTE.txt');
    expect(await checkBag(folder)).toMatchObject({ faults: [], notes: [], files: 2 });
  });

  it('is no bag until it is finished, and says how to go on', async () => {
    const folder = await emptyFolder();
    await filled(folder, file('a', 'a'));
    const { faults, notes } = await checkBag(folder);
    expect(faults).toMatchObject([
      { what: 'missing', file: 'bagit.txt' },
      { what: 'missing', file: 'manifest-sha512.txt' },
    ]);
    expect(notes).toEqual(['The hand-over was interrupted: give its command again, and it goes on.']);
  });
});

describe('a bag that was interrupted', () => {
  it('asks again only for what isn’t there, is another, or was damaged', async () => {
    const folder = await emptyFolder();
    await filled(
      folder,
      file('kept', 'kept'),
      file('changed', 'before'),
      file('damaged', 'whole'),
      file('gone', 'gone'),
    );
    await writeFile(join(folder, 'data', 'damaged'), 'wh0le');
    await rm(join(folder, 'data', 'gone'));
    const askedFor: string[] = [];
    const bag = await openBag(folder, CAR);
    for (const one of [
      file('kept', 'kept'),
      file('changed', 'after'),
      file('damaged', 'whole'),
      file('gone', 'gone'),
    ]) {
      await bag.put({
        ...one,
        content: () => {
          askedFor.push(one.path);
          return one.content();
        },
      });
    }
    await bag.close({ info: [] });
    expect(askedFor).toEqual(['changed', 'damaged', 'gone']);
    expect((await checkBag(folder)).faults).toEqual([]);
    expect(await readFile(join(folder, 'data', 'changed'), 'utf8')).toBe('after');
  });

  const WRITING = `
import { openBag } from './src/handover/bag.ts';
const bag = await openBag(process.argv[1], '${CAR}');
console.log('begun');
for (let n = 0; n < 60; n += 1) {
  await bag.put({ path: 'deep/' + (n % 7) + '/' + n + '.txt', key: 'k' + n, content: async function* () {
    for (let part = 0; part < 40; part += 1) yield Buffer.alloc(20000, String(n * part));
  } });
}
await bag.close({ info: [['Bagging-Date', '2026-05-29']], more: { 'START-HERE.html': '<p>Here.</p>' } });
`;

  function writeApart(folder: string, killAfter?: number): Promise<{ signal: string | null; took: number }> {
    return new Promise((done) => {
      const writing = spawn(process.execPath, ['--input-type=module', '-e', WRITING, folder], {
        stdio: ['ignore', 'pipe', 'inherit'],
      });
      let begun = performance.now();
      writing.stdout.once('data', () => {
        begun = performance.now();
        if (killAfter !== undefined) setTimeout(() => writing.kill('SIGKILL'), killAfter);
      });
      writing.on('close', (_, signal) => done({ signal, took: performance.now() - begun }));
    });
  }

  it('goes on after being killed at any moment, and ends as one that wasn’t, byte for byte', async () => {
    const [undisturbed, disturbed] = [await emptyFolder(), await emptyFolder()];
    const { took } = await writeApart(undisturbed);
    const signals: (string | null)[] = [];
    for (let kill = 1; kill <= 6; kill += 1)
      signals.push((await writeApart(disturbed, (took * kill) / 10)).signal);
    expect(signals.filter((signal) => signal === 'SIGKILL').length).toBeGreaterThan(1);
    expect((await writeApart(disturbed)).signal).toBe(null);
    expect(await contentOf(disturbed)).toEqual(await contentOf(undisturbed));
    expect(await checkBag(disturbed)).toMatchObject({ faults: [], notes: [], files: 60 });
  });
});
