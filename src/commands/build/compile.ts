// Compiles the pages into a folder, without drawing any: `compiled.ts` runs it in a process of its own.
import { cp, readdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
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
    vite: { plugins: [programLeftOut()] },
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

/**
 * Leaves the program out of the compiled pages: what reads and sums the record is loaded already by whoever draws them, and
 * would be compiled, loaded and made ready a second time. They import it as `#src/…`, as package.json says.
 */
function programLeftOut() {
  const src = resolve('src');
  return {
    name: 'program-left-out',
    enforce: 'pre' as const,
    resolveId: (id: string, importer = '') => {
      if (!/^\.{1,2}\/.*\.ts$/.test(id)) return null;
      const file = relative(src, resolve(dirname(importer), id))
        .split(sep)
        .join('/');
      const ours = !file.startsWith('../') && !file.startsWith('site/');
      return ours ? { id: `#src/${file}`, external: true } : null;
    },
  };
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
