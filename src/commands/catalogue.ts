// `npm run catalogue`: writes the fields and the problems into content/README.md. Exit 0, 1 when the guide lacks its marks.
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { checks } from '../record/checks/index.ts';
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
    if (fresh !== guide) await writeFile(GUIDE, fresh);
    console.log(`${GUIDE}: ${names.length} problems${fresh === guide ? ', nothing changed' : ' written'}.`);
    return 0;
  } catch (error) {
    console.error((error as Error).message);
    return 1;
  }
}

process.exitCode = await catalogue();
