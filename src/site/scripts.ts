// The site's own scripts for the browser: each is compiled into one classic file, which runs from a folder as from a
// web host.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build } from 'esbuild';

/** A script for each kind of page that has one, by its file in browser/. */
const SCRIPTS = ['what-if', 'viewer', 'search'];

/** Writes the scripts beside the compiled pages, and serves them in dev as they are written. */
export function browserScripts(): AstroIntegration {
  return {
    name: 'browser-scripts',
    hooks: {
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const [, name = ''] = /^\/script\/([^/]+)\.js(?:\?|$)/.exec(request.url ?? '') ?? [];
          if (!SCRIPTS.includes(name)) return next();
          compiled(name).then(
            (script) => response.setHeader('content-type', 'text/javascript').end(script),
            next,
          );
        });
      },
      'astro:build:done': async ({ dir }) => {
        const folder = fileURLToPath(new URL('script/', dir));
        await mkdir(folder, { recursive: true });
        for (const name of SCRIPTS) await writeFile(join(folder, `${name}.js`), await compiled(name));
      },
    },
  };
}

/** A script in one piece: no module, nothing fetched, the same bytes from the same sources. */
async function compiled(name: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [`src/site/browser/${name}.ts`],
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    legalComments: 'eof',
  });
  return outputFiles[0]?.text ?? '';
}
