// Folders of any shape: links, pipes, folders named like texts, names that other machines can't have. Whatever lies where a
// record's files lie is read or told.
import { execFile, execFileSync } from 'node:child_process';
import { chmod, mkdir, rm, symlink, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it, onTestFinished } from 'vitest';
import { readFolder } from '../../src/disk/folder.ts';
import { openFolder } from '../../src/disk/open-folder.ts';
import { kindOf } from '../../src/record/open.ts';
import { problemText } from '../../src/views/problem-text.ts';
import { emptyFolder, emptyFolderFor } from '../commands/run.ts';
import { SMALL } from '../record/small.ts';
import { PATIENCE, tries } from './size.ts';

const MAKE_PIPE = 'mkfifo';
const DAY = '---\nby: tobias\n---\n\nStripped it.\n';

async function laid(folder: string, more: Record<string, string> = {}): Promise<string> {
  for (const [name, text] of Object.entries({ ...SMALL, ...more })) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), text);
  }
  return folder;
}
const small = async (more: Record<string, string> = {}) => laid(await emptyFolder(), more);
const said = async (folder: string) => (await openFolder(folder, '2025-12-31')).problems.map(problemText);

describe('a name that isn’t what it should be', () => {
  it.each([
    ['log/2025-03-04.MD', 'Name it `log/2025-03-04.md`.'],
    ['log/2025-03-04.markdown', 'Name it `log/2025-03-04.md`.'],
    ['log/2025-03-04.md.txt', 'Name it `log/2025-03-04.md`.'],
    ['CAR.MD', 'Name it `CAR.md`.'],
    ['log/2025-03-04.txt', 'Write its words into an entry'],
    ['log/2025-03-04', 'Write its words into an entry'],
    ['parts/Cowl.md', 'in lower case with hyphens'],
    ['parts/con.md', 'Windows keeps'],
    ['choices/aux.md', 'Windows keeps'],
    ['log/com1/2025-03-04.md', 'Windows keeps'],
    ['parts/rear fender.md', 'in lower case with hyphens'],
    ['parts/cowl .md', 'in lower case with hyphens'],
    ['parts/cowl..md', 'in lower case with hyphens'],
    ['parts/left/cowl.md', 'in lower case with hyphens'],
    [`parts/${'x'.repeat(252)}.md`, 'Give it a shorter name.'],
    ['log/2025-3-4.md', 'Name a day’s entry by its date'],
    ['log/2025-02-30.md', 'Name a day’s entry by its date'],
    ['log/2025-03-04\u200b.md', 'Name a day’s entry by its date'],
    ['log/\u202e2025-03-04.md', 'Name a day’s entry by its date'],
    ['log/2025\n03-04.md', 'Name a day’s entry by its date'],
    ['log/\u001b[31m2025-03-04.md', 'Name a day’s entry by its date'],
    ['parts/stra\u00dfe.md', 'in lower case with hyphens'],
    ['IMG_1028.jpg', 'Bring it in with `npm run photos`'],
  ])('%j is told', async (name, mend) => {
    const lines = (await said(await small({ [name]: DAY }))).filter((line) => line.includes(mend));
    expect(lines).toHaveLength(1);
    expect(lines[0]).not.toMatch(/(?!\n)[\p{Cc}\u200b\u202a-\u202e]/u);
  });

  it.each([
    '.DS_Store',
    '.2025-03-04.md.swp',
    'log/2025-03-04.md~',
    'log/Thumbs.db',
    'README.md',
    'notes.pdf',
  ])('%j is no file of the record, and nobody thinks so', async (name) => {
    expect(await said(await small({ [name]: DAY }))).toEqual([]);
  });

  it('is told of films and other files in photos/, but not of what a system left there', async () => {
    const films = ['photos/2025-03-03/a.mov', 'photos/2025-03-03/deeper/b.mp4', 'photos/c.dng'];
    const left = ['photos/.DS_Store', 'photos/2025-03-03/._a.mov', 'photos/Thumbs.db', 'photos/.x/d.mov'];
    const lines = await said(await small(Object.fromEntries([...films, ...left].map((name) => [name, '']))));
    expect(lines.map((line) => line.split(':')[0])).toEqual(films);
    expect(lines.filter((line) => !line.endsWith('[not-a-picture]'))).toEqual([]);
  });

  it('is told of pictures that another machine would take for one', async () => {
    const day = 'photos/2025-03-03';
    const names = ['Caf\u00e9.jpg', 'Cafe\u0301.jpg', 'lip.JPG', 'Lip.jpg'];
    const lines = await said(await small(Object.fromEntries(names.map((name) => [`${day}/${name}`, '']))));
    expect(lines.filter((line) => line.includes('the way an accent is written alone'))).toHaveLength(1);
    expect(lines.filter((line) => line.includes('by capitals alone'))).toHaveLength(1);
  });
});

describe('what is no file, or is closed', () => {
  it('is told: a folder’s name on a file, a pipe, a socket, links out and round', async () => {
    const folder = await emptyFolder();
    await laid(folder);
    await rm(join(folder, 'parts'), { recursive: true });
    await writeFile(join(folder, 'parts'), 'no folder');
    await symlink('/etc/hostname', join(folder, 'log/2025-03-05.md'));
    await symlink('..', join(folder, 'log/up'));
    await symlink('nowhere.md', join(folder, 'log/2025-03-06.md'));
    await symlink('2025-03-07.md', join(folder, 'log/2025-03-07.md'));
    if (process.platform !== 'win32') {
      execFileSync(MAKE_PIPE, [join(folder, 'log/2025-03-08.md')]);
      const server = createServer().listen(join(folder, 'log/2025-03-09.md'));
      onTestFinished(() => void server.close());
      await new Promise((done) => server.once('listening', done));
    }
    const { problems } = await readFolder(folder);
    const told = new Set(problems.map(({ place }) => place.file));
    const days = process.platform === 'win32' ? [5, 6, 7] : [5, 6, 7, 8, 9];
    for (const day of days) expect([...told]).toContain(`log/2025-03-0${day}.md`);
    expect([...told]).toContain('log/up');
    expect(
      (await said(folder)).some((line) => line.includes('Unknown part') || line.includes('is no part')),
    ).toBe(true);
  });

  it('is told of a folder and of a file that may not be read, and of the record’s own', async () => {
    const folder = await small({ 'log/2025-03-04.md': DAY, 'choices/a.md': DAY });
    await chmod(join(folder, 'log/2025-03-04.md'), 0o000);
    await chmod(join(folder, 'choices'), 0o000);
    await chmod(folder, 0o755);
    const closed = await readAsAnybody(folder);
    await chmod(join(folder, 'choices'), 0o755);
    expect(closed).toContain('log/2025-03-04.md: `log/2025-03-04.md` can’t be opened (EACCES).');
    expect(closed).toContain('choices: `choices` can’t be opened (EACCES).');
    await chmod(folder, 0o311);
    const top = await readAsAnybody(folder);
    await chmod(folder, 0o755);
    expect(top).toEqual([`.: \`${folder}\` can’t be opened (EACCES).`]);
  });
});

/** What a person without rights of their own is told: who may read everything is refused nothing. */
async function readAsAnybody(folder: string): Promise<string[]> {
  const code = `
    const { readFolder } = await import(${JSON.stringify(join(process.cwd(), 'src/disk/folder.ts'))});
    if (process.getuid?.() === 0) process.setuid(65534);
    const { problems } = await readFolder(${JSON.stringify(folder)});
    console.log(JSON.stringify(problems.map(({ place, reason }) => place.file + ': ' + reason)));`;
  const { stdout } = await promisify(execFile)(process.execPath, ['--input-type=module', '-e', code]);
  return JSON.parse(stdout);
}

describe('a folder at random', () => {
  it(
    'is read or told, file by file, and nothing in it is followed for ever',
    async () => {
      const { folder: around, remove } = await emptyFolderFor('trees');
      onTestFinished(remove);
      const name = fc.constantFrom(
        ...[
          'log',
          'parts',
          'choices',
          'statements',
          'photos',
          'car.md',
          'shop.md',
          'cowl.md',
          'Cowl.md',
          'con.md',
        ],
        ...[
          '2025-03-04.md',
          '2025-03-04-b.md',
          '2025-03-04.MD',
          'a.jpg',
          'A.JPG',
          '.hidden',
          'x',
          'README.md',
          'a b',
          'é.md',
        ],
        ...[
          'e\u0301.md',
          '\u202e.md',
          'a\nb.md',
          '\u001b[31m.md',
          '-',
          '~',
          'x'.repeat(250),
          'nul',
          'a.',
          'a ',
          '__proto__',
          '$(x)',
        ],
      );
      const path = fc.array(name, { minLength: 1, maxLength: 4 }).map((parts) => parts.join('/'));
      const kind = fc.constantFrom('text', 'text', 'text', 'folder', 'link', 'nothing');
      const tree = fc.array(
        fc.record({ path, kind, to: path, text: fc.constantFrom(DAY, '', 'words', '---\nx: [') }),
        {
          maxLength: 12,
        },
      );
      let count = 0;
      await fc.assert(
        fc.asyncProperty(tree, async (nodes) => {
          const root = join(around, `${++count}`);
          await mkdir(root);
          const texts: string[] = [];
          for (const { path: at, kind: what, to, text } of nodes) {
            try {
              await mkdir(dirname(join(root, at)), { recursive: true });
              if (what === 'folder') await mkdir(join(root, at), { recursive: true });
              else if (what === 'link') await symlink(join(root, to), join(root, at));
              else if (what === 'nothing') await symlink(join(root, 'nowhere'), join(root, at));
              else await writeFile(join(root, at), text, { flag: 'wx' });
              if (what === 'text') texts.push(at);
            } catch {
              // The disk itself refuses it: two things of one name, or a file in a file.
            }
          }
          const { files, photos, problems } = await readFolder(root);
          const opened = await openFolder(root, '2025-12-31');
          const answered = new Set([
            ...files.map(({ file }) => file),
            ...photos,
            ...problems.map(({ place }) => place.file),
          ]);
          const own = (at: string) =>
            !at.split('/').some((part) => part.startsWith('.')) && at !== 'README.md' && at.endsWith('.md');
          // A file within a folder that is refused is told with it.
          const lost = texts.filter((at) => own(at) && !ways(at).some((way) => answered.has(way)));
          expect(lost).toEqual([]);
          const strange = files.filter(({ file }) => kindOf(file) === undefined).map(({ file }) => file);
          const told = new Set(opened.problems.map(({ place }) => place.file));
          expect(strange.filter((file) => !told.has(file))).toEqual([]);
          for (const line of opened.problems.map(problemText))
            expect(line).not.toMatch(/(?!\n)[\p{Cc}\u202a-\u202e]/u);
          await rm(root, { recursive: true });
        }),
        tries(0.05),
      );
    },
    PATIENCE,
  );
});

/** A path and the folders around it. */
function ways(path: string): string[] {
  const parts = path.split('/');
  return parts.map((_, i) => parts.slice(0, i + 1).join('/'));
}
