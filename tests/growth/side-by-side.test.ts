// Three records built side by side, as a matrix of machines or one machine does it; and a built site brought to a second
// folder by content, as it goes to an object store.
import { cp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { emptyFolder, npmRun } from '../commands/run.ts';
import { bytesIn } from '../photos/record-of.ts';
import { SMALL } from '../record/small.ts';

const ENTRY = 'log/2025-03-03.md';

/** A small record on disk, of a car of that name. */
async function recordNamed(name: string): Promise<string> {
  const folder = await emptyFolder();
  for (const [file, text] of Object.entries(SMALL)) {
    const path = join(folder, file);
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, text.replace('name: Aldermere Fourteen', `name: ${name}`));
  }
  return folder;
}

async function built(record: string): Promise<string> {
  const out = join(await emptyFolder(), 'site');
  const { code, err } = await npmRun('build', ['--out', out], record);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return out;
}

it('three records built side by side are what each is alone', async () => {
  const records = await Promise.all(['First car', 'Second car', 'Third car'].map(recordNamed));
  const together = await Promise.all(records.map(async (record) => bytesIn(await built(record))));
  for (const [at, record] of records.entries())
    expect(await bytesIn(await built(record))).toEqual(together[at]);
  const fronts = together.map((site) => Buffer.from(site.get('index.html') ?? '', 'base64').toString());
  expect(fronts.map((front) => /(First|Second|Third) car/.exec(front)?.[1])).toEqual([
    'First',
    'Second',
    'Third',
  ]);
});

it('a changed day changes few files, and bringing those over gives the same site', async () => {
  const record = await recordNamed('Aldermere Fourteen');
  const before = await built(record);
  const second = join(await emptyFolder(), 'second');
  await cp(before, second, { recursive: true });
  const entry = join(record, ENTRY);
  await writeFile(entry, `${await readFile(entry, 'utf8')}\nThe lead came off in one piece.\n`);
  const [now, there] = [await bytesIn(await built(record)), await bytesIn(second)];
  const changed = [...now].filter(([file, bytes]) => there.get(file) !== bytes);
  const gone = [...there.keys()].filter((file) => !now.has(file));
  expect(changed.map(([file]) => file)).toContain('day/2025-03-03.html');
  expect(changed.length).toBeLessThan(now.size / 4);
  for (const [file, bytes] of changed) await writeFile(join(second, file), bytes, 'base64');
  for (const file of gone) await rm(join(second, file));
  expect(await bytesIn(second)).toEqual(now);
});
