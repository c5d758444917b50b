// Compiles the pages, and keeps them for as long as the program is the same: a change in a record compiles nothing.
import { cp, mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { onDisk } from '../../disk/disk-fault.ts';
import { inWorkFolder } from '../../photos/work-folder.ts';
import { filesOf, treeDigest } from './program.ts';

/** `pages` is the module that draws them; `beside` holds what every site has: styles, fonts, scripts. */
export type Compiled = { pages: string; beside: string };

const KEPT = join('.cache', 'compiled');
/** How long what another program compiled is left to builds that may still use it, in milliseconds. */
const LEFT_ALONE = 3_600_000;

/** The compiled pages of a program, by its digest: as kept when they are whole, else made and kept. */
export async function compiledPages(program: string): Promise<Compiled> {
  const folder = join(KEPT, program);
  await onDisk(KEPT, async () => {
    await mkdir(KEPT, { recursive: true });
    if (!(await isWhole(folder))) await keep(folder);
    const now = new Date();
    await utimes(folder, now, now);
  });
  const entry = (await filesOf(join(folder, 'pages'))).find((file) =>
    /^prerender-entry\.[^/]*\.mjs$/.test(file),
  );
  if (!entry) throw new Error(`The pages compiled in ${folder} have no entry.`);
  return { pages: join(folder, 'pages', entry), beside: join(folder, 'beside') };
}

/** What was kept is used only if every byte of it is as it was written. */
async function isWhole(folder: string): Promise<boolean> {
  const sum = await readFile(join(folder, 'sum'), 'utf8').catch(() => undefined);
  return sum !== undefined && sum === (await sumOf(folder).catch(() => undefined));
}

async function sumOf(folder: string): Promise<string> {
  return `${await treeDigest(join(folder, 'pages'))} ${await treeDigest(join(folder, 'beside'))}\n`;
}

async function keep(folder: string): Promise<void> {
  await clearOld();
  await inWorkFolder(KEPT, async (making) => {
    await compile(making);
    await writeFile(join(making, 'sum'), await sumOf(making));
    // Another build may have put the same in place meanwhile; what was damaged goes.
    if (await isWhole(folder)) return;
    await rm(folder, { recursive: true, force: true });
    await rename(making, folder).catch(async (error: unknown) => {
      if (!(await isWhole(folder))) throw error;
    });
  });
}

/** Takes away what other programs compiled and nobody has used for a while. */
async function clearOld(): Promise<void> {
  for (const name of await readdir(KEPT)) {
    const path = join(KEPT, name);
    const used = (await stat(path).catch(() => undefined))?.mtimeMs ?? 0;
    if (Date.now() - used > LEFT_ALONE) await rm(path, { recursive: true, force: true });
  }
}

async function compile(into: string): Promise<void> {
  const beside = join(into, 'beside');
  // Loaded where it is needed: it takes longer to load than a small record to build.
  const { build } = await import('astro');
  const integrations = [pagesKept(join(into, 'pages'))];
  await build({
    root: '.',
    outDir: `./${beside}`,
    cacheDir: `./${into}/astro`,
    logLevel: 'error',
    integrations,
  });
  await rm(join(into, 'astro'), { recursive: true, force: true });
  const own = (await filesOf(beside)).filter((file) => file.startsWith('_astro/'));
  if (own.length > 0) {
    throw new Error(
      `Pages bring no styles or scripts of their own, but ${own.join(', ')} were made: use public/.`,
    );
  }
}

/** Stops the build where it would draw pages, and keeps what it compiled to draw them with. */
function pagesKept(pages: string): AstroIntegration {
  return {
    name: 'pages-kept',
    hooks: {
      'astro:build:start': ({ setPrerenderer }) => {
        setPrerenderer({
          name: 'draws-nothing',
          getStaticPaths: async () => [],
          render: async () => new Response(null, { status: 404 }),
        });
      },
      'astro:build:generated': async ({ dir }) => {
        await cp(fileURLToPath(new URL('.prerender/', dir)), pages, { recursive: true });
      },
    },
  };
}
