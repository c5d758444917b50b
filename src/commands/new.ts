// `npm run new -- <folder>`: lays down an empty record. Exit 0, 1 when the folder isn't empty, 2 for wrong use.
import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { BLANK_FOLDERS, blankRecord } from '../views/blank-record.ts';
import { asked } from './asked.ts';
import { ended } from './ended.ts';

const USE = 'Use: npm run new -- <folder>. The folder is made if it isn’t there; it must be empty.';

async function layDown(): Promise<number> {
  const words = asked(USE, {}, (folders) => {
    if (folders.length !== 1) throw new Error('Name one folder');
  });
  if (!words) return 2;
  const [folder = ''] = words.positionals;
  const there = await namesIn(folder);
  if (there === undefined || there.length > 0) {
    console.error(
      there === undefined
        ? `\`${folder}\` is a file, so nothing was written. Name a folder that is new or empty.`
        : `\`${folder}\` holds \`${there[0]}\`, so nothing was written. Name a folder that is new or empty.`,
    );
    return 1;
  }
  // Sweden writes a day as the record does.
  const today = new Date().toLocaleDateString('sv-SE');
  const files = blankRecord(today);
  for (const name of BLANK_FOLDERS) await mkdir(join(folder, name), { recursive: true });
  for (const { file, text } of files) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), text, { flag: 'wx' });
  }
  console.log(
    `Written in ${folder}: ${files.map(({ file }) => file).join(', ')}. Next: fill in car.md and shop.md, then npm run check -- ${folder}`,
  );
  return 0;
}

/** What stands in a folder; nothing when it isn't there, undefined when it is no folder. */
async function namesIn(folder: string): Promise<string[] | undefined> {
  try {
    return await readdir(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return [];
    if (code === 'ENOTDIR') return undefined;
    throw error;
  }
}

process.exitCode = await ended(layDown);
