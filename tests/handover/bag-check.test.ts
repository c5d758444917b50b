import { rename, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkBag } from '../../src/handover/bag-check.ts';
import { checkedText } from '../../src/handover/bag-said.ts';
import { type Files, folderOf, HELLO, HELLO_SHA512, minimal, sha } from './bags.ts';

const faultsOf = async (files: Files) => (await checkBag(await folderOf(files))).faults;

/** The minimal bag with files changed; `undefined` takes one away. */
function bag(changes: Record<string, string | undefined>): Files {
  const files = Object.entries({ ...minimal(), ...changes });
  return Object.fromEntries(files.flatMap(([path, text]) => (text === undefined ? [] : [[path, text]])));
}

describe('a whole bag', () => {
  it('has no fault', async () => {
    // F1: conformance suite v1.0/valid/basicBag.
    const checked = await checkBag(await folderOf(minimal()));
    expect(checked).toEqual({ files: 1, octets: 6, algorithms: ['sha512'], faults: [], notes: [] });
    expect(checkedText(checked)).toBe('The bag is whole: 1 file, 6 bytes, each checked by sha512.');
  });

  it('may end its lines in other ways, use capitals in checksums and any space between', async () => {
    // RFC 8493, 2.1.3 and 2.3.
    const faults = await faultsOf(
      bag({
        'bagit.txt': 'BagIt-Version: 1.0\r\nTag-File-Character-Encoding: UTF-8\r\n',
        'manifest-sha512.txt': `${HELLO_SHA512.toUpperCase()} \t data/hello.txt`,
        'bag-info.txt': 'Payload-Oxum: 6.1\rExternal-Description: a long\r  one\r',
      }),
    );
    expect(faults).toEqual([]);
  });

  it('may be in an encoding that it names', async () => {
    const path = 'data/h\u00e4kchen.txt';
    const files: Files = {
      'bagit.txt': 'BagIt-Version: 1.0\nTag-File-Character-Encoding: ISO-8859-1\n',
      'manifest-sha512.txt': Buffer.from(`${HELLO_SHA512}  ${path}\n`, 'latin1'),
      [path]: HELLO,
    };
    expect(await faultsOf(files)).toEqual([]);
  });

  it('may come from a disk that writes accents apart from their letters', async () => {
    const checked = await checkBag(
      await folderOf({
        'bagit.txt': minimal()['bagit.txt'] as string,
        'manifest-sha512.txt': `${HELLO_SHA512}  data/caf\u00e9.txt\n`,
        'data/cafe\u0301.txt': HELLO,
      }),
    );
    expect(checked.faults).toEqual([]);
    expect(checked.notes).toEqual([
      'data/cafe\u0301.txt: its accents are written apart from their letters (NFD); other disks may join them.',
    ]);
  });
});

// F2: the names are those of the Library of Congress's conformance suite; the bags are written anew here.
describe('the invalid bags of the conformance suite', () => {
  const info = (text: string) => bag({ 'bag-info.txt': text });

  it('bagit-with-invalid-whitespace', async () => {
    expect(
      await faultsOf(bag({ 'bagit.txt': 'BagIt-Version : 1.0\nTag-File-Character-Encoding : UTF-8\n' })),
    ).toEqual([
      {
        what: 'form',
        file: 'bagit.txt',
        line: 1,
        says: 'expected `BagIt-Version: 1.0`, found `BagIt-Version : 1.0`',
      },
      {
        what: 'form',
        file: 'bagit.txt',
        line: 2,
        says: 'expected `Tag-File-Character-Encoding: UTF-8`, found `Tag-File-Character-Encoding : UTF-8`',
      },
    ]);
    expect(await faultsOf(info('Source-Organization : nobody\n'))).toMatchObject([{ what: 'form', line: 1 }]);
    expect(await faultsOf(info('Source-Organization:nobody\n'))).toMatchObject([{ what: 'form', line: 1 }]);
  });

  it('notAllManifestsListAllFiles', async () => {
    const other = 'other\n';
    const files = bag({
      'data/other.txt': other,
      'manifest-sha256.txt': `${sha('sha256', HELLO)}  data/hello.txt\n${sha('sha256', other)}  data/other.txt\n`,
    });
    expect(await faultsOf(files)).toEqual([
      { what: 'form', file: 'manifest-sha512.txt', says: 'it doesn’t list `data/other.txt`, another does' },
    ]);
  });

  it('missing-from-manifest', async () => {
    expect(await faultsOf(bag({ 'data/missingFromManifest.txt': 'x' }))).toEqual([
      { what: 'extra', file: 'data/missingFromManifest.txt', says: 'no manifest lists it' },
    ]);
  });

  it('same-filename-listed-twice-with-the-same-hash', async () => {
    const line = `${HELLO_SHA512}  data/hello.txt\n`;
    expect(await faultsOf(bag({ 'manifest-sha512.txt': line + line }))).toEqual([
      {
        what: 'form',
        file: 'manifest-sha512.txt',
        line: 2,
        says: '`data/hello.txt` is listed twice, first in line 1',
      },
    ]);
  });

  it('same-filename-listed-twice-with-different-hashes', async () => {
    const lines = `${HELLO_SHA512}  data/hello.txt\n${sha('sha512', 'x')}  data/hello.txt\n`;
    expect(await faultsOf(bag({ 'manifest-sha512.txt': lines }))).toMatchObject([{ what: 'form', line: 2 }]);
  });

  it('corrupt-data-file', async () => {
    expect(await faultsOf(bag({ 'data/hello.txt': 'hellO\n' }))).toEqual([
      { what: 'changed', file: 'data/hello.txt', says: 'its sha512 isn’t what was written down' },
    ]);
  });

  it('extra-file-in-bag', async () => {
    expect(await faultsOf(bag({ 'data/deep/in/it.txt': '' }))).toMatchObject([
      { what: 'extra', file: 'data/deep/in/it.txt' },
    ]);
  });

  it('missing-bagit.txt', async () => {
    expect(await faultsOf(bag({ 'bagit.txt': undefined }))).toMatchObject([
      { what: 'missing', file: 'bagit.txt' },
    ]);
  });

  it('bom-in-bagit.txt', async () => {
    expect(await faultsOf(bag({ 'bagit.txt': `\ufeff${minimal()['bagit.txt']}` }))).toEqual([
      { what: 'form', file: 'bagit.txt', says: 'it begins with a byte-order mark' },
    ]);
  });

  it.each([
    ['out-of-scope-file-paths-using-dot-notation', '../../../README.md'],
    ['out-of-scope-file-paths-using-dot-notation, inside data', 'data/../../README.md'],
    ['out-of-scope-file-paths-using-absolute-path', '/etc/hosts'],
    ['out-of-scope-file-paths-using-shortcut', '~/foo'],
    ['windows: absolute path', ['D:', 'tools', 'setx.exe'].join('\\')],
    ['windows: shortcut', '%25HomeDrive%25\\setx.exe'],
    ['windows: unc', '\\\\?\\UNC\\server\\setx.exe'],
    ['windows: dot notation', 'data\\..\\..\\setx.exe'],
    ['outside data/', 'README.md'],
  ])('%s', async (_, path) => {
    const lines = `${HELLO_SHA512}  data/hello.txt\n${sha('sha512', 'x')}  ${path}\n`;
    expect(await faultsOf(bag({ 'manifest-sha512.txt': lines }))).toMatchObject([
      { what: 'form', file: 'manifest-sha512.txt', line: 2 },
    ]);
  });

  it('paths out of the bag in fetch.txt, too', async () => {
    const fetch = 'https://example.org/a 3 ../a\nno address\nhttps://example.org/b - data/hello.txt\n';
    expect(await faultsOf(bag({ 'fetch.txt': fetch }))).toMatchObject([
      { file: 'fetch.txt', line: 1 },
      { file: 'fetch.txt', line: 2 },
    ]);
  });
});

describe('a bag that isn’t as it was made', () => {
  it('tells of every file at once, in the order of form, missing, changed, extra', async () => {
    const manifest = ['a', 'b', 'c'].map((name) => `${sha('sha512', name)}  data/${name}\n`).join('');
    const faults = await faultsOf({
      'bagit.txt': minimal()['bagit.txt'] as string,
      'manifest-sha512.txt': manifest,
      'bag-info.txt': 'Payload-Oxum: 3.3\n',
      'data/a': 'a',
      'data/c': 'see',
      'data/d': 'd',
    });
    expect(faults.map(({ what, file, says }) => `${what} ${file}: ${says}`)).toEqual([
      'form bag-info.txt: Payload-Oxum says 3.3, and 5.3 is there',
      'missing data/b: a manifest lists it',
      'changed data/c: its sha512 isn’t what was written down',
      'extra data/d: no manifest lists it',
    ]);
  });

  it.each([
    ['no Payload-Oxum', 'Payload-Oxum: many\n', 'Payload-Oxum `many` is not octets, a dot and a count'],
    ['two of them', 'Payload-Oxum: 6.1\nPayload-Oxum: 6.1\n', 'Payload-Oxum stands there more than once'],
  ])('has %s', async (_, text, says) => {
    expect(await faultsOf(bag({ 'bag-info.txt': text }))).toEqual([
      { what: 'form', file: 'bag-info.txt', says },
    ]);
  });

  it('has a Payload-Oxum of any size in the form of the standard’s example', async () => {
    // F3: RFC 8493, 2.2.2: the form is right, and only the figures aren't those of this bag.
    expect(await faultsOf(bag({ 'bag-info.txt': 'Payload-Oxum: 279164409832.1198\n' }))).toMatchObject([
      { says: 'Payload-Oxum says 279164409832.1198, and 6.1 is there' },
    ]);
  });

  it.each([
    ['a manifest whose lines are none', 'manifest-sha512.txt', 'hello\n'],
    ['a manifest with an empty line', 'manifest-sha512.txt', `${HELLO_SHA512}  data/hello.txt\n\n\n`],
    ['a checksum that is too short', 'manifest-sha512.txt', `${HELLO_SHA512.slice(1)}  data/hello.txt\n`],
    ['a third line in bagit.txt', 'bagit.txt', `${minimal()['bagit.txt']}More: x\n`],
    ['another version', 'bagit.txt', 'BagIt-Version: 0.97\nTag-File-Character-Encoding: UTF-8\n'],
    ['an encoding that is none', 'bagit.txt', 'BagIt-Version: 1.0\nTag-File-Character-Encoding: nothing\n'],
    ['a checksum nobody knows', 'manifest-crc99.txt', 'abc  data/hello.txt\n'],
    ['a tag manifest without the manifest', 'tagmanifest-sha256.txt', ''],
    ['a tag manifest of itself', 'tagmanifest-sha256.txt', `${sha('sha256', '')}  tagmanifest-sha256.txt\n`],
    ['payload in a tag manifest', 'tagmanifest-sha256.txt', `${sha('sha256', HELLO)}  data/hello.txt\n`],
  ])('has %s', async (_, file, text) => {
    const faults = await faultsOf(bag({ [file]: text }));
    expect(faults).toContainEqual(expect.objectContaining({ what: 'form', file }));
  });

  it('has a tag file that was changed', async () => {
    const files = minimal();
    const line = (name: string) => `${sha('sha256', files[name] ?? '')}  ${name}\n`;
    const tags = line('bagit.txt') + line('manifest-sha512.txt');
    const folder = await folderOf({ ...files, 'tagmanifest-sha256.txt': tags });
    expect((await checkBag(folder)).faults).toEqual([]);
    await writeFile(join(folder, 'bagit.txt'), `${files['bagit.txt']}`.replaceAll('\n', '\r\n'));
    expect((await checkBag(folder)).faults).toMatchObject([{ what: 'changed', file: 'bagit.txt' }]);
  });

  it('has a link in place of a file, which isn’t followed', async () => {
    const folder = await folderOf(minimal());
    await rename(join(folder, 'data', 'hello.txt'), join(folder, 'hello.txt'));
    await symlink(join(folder, 'hello.txt'), join(folder, 'data', 'hello.txt'));
    expect((await checkBag(folder)).faults).toMatchObject([
      { what: 'form', file: 'data/hello.txt', says: 'it is a link, not a file' },
    ]);
  });

  it('notes names that are one to many disks, and tag files that nothing is said of', async () => {
    const line = (name: string) => `${HELLO_SHA512}  data/${name}\n`;
    const files = bag({
      'manifest-sha512.txt': line('hello.txt') + line('Hello.txt'),
      'data/Hello.txt': HELLO,
      'tagmanifest-sha256.txt': '',
    });
    const { notes } = await checkBag(await folderOf(files));
    expect(notes).toContain('data/Hello.txt and data/hello.txt are one name to many disks.');
    expect(notes).toContain('bagit.txt is in no tag manifest, so nothing can be said of it.');
  });

  it('can’t steer the terminal by a name', async () => {
    const checked = await checkBag(await folderOf(bag({ 'data/\u001b[2J\n.txt': 'x' })));
    expect(checkedText(checked)).toContain('extra    data/\\u001b[2J\\u000a.txt  no manifest lists it.');
  });
});
