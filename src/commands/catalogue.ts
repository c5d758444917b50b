// `npm run catalogue`: writes the fields and the problems into content/README.md, and what editors read into shared/.
// Exit 0, 1 when the guide lacks its marks.
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { checks } from '../record/checks/index.ts';
import { editorFiles } from '../views/editor-files.ts';
import { fieldTables } from '../views/field-tables.ts';
import { problemCatalogue, withBetween } from '../views/problem-catalogue.ts';

const GUIDE = 'content/README.md';
const PROBLEMS = 'tests/problems';

async function catalogue(): Promise<number> {
  const names = (await readdir(PROBLEMS)).sort();
  const said = await Promise.all(
    names.map(async (name) => ({ name, says: await readFile(`${PROBLEMS}/${name}/says.txt`, 'utf8') })),
  );
  const guide = await readFile(GUIDE, 'utf8');
  try {
    const fresh = withBetween(
      withBetween(guide, 'fields', fieldTables()),
      'problems',
      problemCatalogue(said, checks),
    );
    const files = [{ file: GUIDE, text: fresh }, ...editorFiles()];
    let written = 0;
    for (const { file, text } of files) {
      if (text === (await readFile(file, 'utf8').catch(() => undefined))) continue;
      await mkdir(dirname(file), { recursive: true });
      await writeFile(file, text);
      written += 1;
    }
    const all = `${GUIDE} with ${names.length} problems, and ${files.length - 1} files for editors`;
    console.log(`${all}: ${written === 0 ? 'nothing changed' : `${written} written`}.`);
    return 0;
  } catch (error) {
    console.error((error as Error).message);
    return 1;
  }
}

process.exitCode = await catalogue();
