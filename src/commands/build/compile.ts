// Compiles the pages into a folder, without drawing any: `compiled.ts` runs it in a process of its own.
import { cp, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type AstroIntegration, build } from 'astro';
import { filesOf } from './program.ts';

const [into] = process.argv.slice(2);
// Nobody waits for it any more.
process.on('disconnect', () => process.exit(1));
if (into !== undefined) {
  await compile(into).then(
    () => process.exit(0),
    ({ code, path, message }: NodeJS.ErrnoException) =>
      process.send?.({ code, path, message }, () => process.exit(1)),
  );
}

async function compile(into: string): Promise<void> {
  const beside = join(into, 'beside');
  const pages = join(into, 'pages');
  const integrations = [pagesKept(pages)];
  await build({
    root: '.',
    outDir: `./${beside}`,
    cacheDir: `./${into}/astro`,
    logLevel: 'error',
    integrations,
  });
  await rm(join(into, 'astro'), { recursive: true, force: true });
  const own = filesOf(beside).filter((file) => file.startsWith('_astro/'));
  if (own.length > 0) {
    throw new Error(
      `Pages bring no styles or scripts of their own, but ${own.join(', ')} were made: use public/.`,
    );
  }
  await writeFile(join(pages, 'pages.mjs'), await entryOf(pages));
}

/** What draws compiled pages, and what lists them. */
async function entryOf(pages: string): Promise<string> {
  const entry = (await readdir(pages)).find((file) => /^prerender-entry\.[^/]*\.mjs$/.test(file));
  if (!entry) throw new Error(`The pages compiled in ${pages} have no entry.`);
  return `export { app } from './${entry}';
export { StaticPaths } from 'astro/runtime/prerender/static-paths.js';
`;
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
