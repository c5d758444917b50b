// Puts the program that builds and the compiled pages into a few files with the packages they use: a thousand small
// modules take longer to find and load than a page to draw.
import { readdir } from 'node:fs/promises';
import { resolve } from 'node:path';
import { build } from 'esbuild';

/** Packages that bring a binary, which is found beside them. */
const BINARY = ['sharp', '@napi-rs/canvas'];

/** Packages in the older module format ask for what comes with Node by `require`. */
const REQUIRE = `import { createRequire as requireOf } from 'node:module';
const require = requireOf(import.meta.url);`;

/**
 * Bundles into a folder: `command.mjs` is `command.ts`, and `pages.mjs` has the compiled pages of the folder `pages` and
 * what lists them.
 */
export async function bundle(pages: string, into: string): Promise<void> {
  const entry = (await readdir(pages)).find((file) => /^prerender-entry\.[^/]*\.mjs$/.test(file));
  if (!entry) throw new Error(`The pages compiled in ${pages} have no entry.`);
  const listed = {
    contents: `export { app } from ${JSON.stringify(resolve(pages, entry))};
      export { StaticPaths } from 'astro/runtime/prerender/static-paths.js';`,
    resolveDir: resolve('.'),
  };
  await build({
    entryPoints: { command: 'src/commands/build/command.ts', pages: 'pages' },
    plugins: [
      {
        name: 'pages',
        setup: (all) => {
          all.onResolve({ filter: /^pages$/ }, ({ kind }) =>
            kind === 'entry-point' ? { path: 'pages', namespace: 'pages' } : undefined,
          );
          all.onLoad({ filter: /.*/, namespace: 'pages' }, () => listed);
        },
      },
    ],
    outdir: into,
    outExtension: { '.js': '.mjs' },
    banner: { js: REQUIRE },
    external: BINARY,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'error',
  });
}
