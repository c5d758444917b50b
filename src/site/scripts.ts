// The site's own script for the browser: compiled into one classic file, which runs from a folder as from a web host.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build } from 'esbuild';

const SOURCE = 'src/site/browser/what-if.ts';

/** Writes the what-if's script beside the pages of the built site, and serves it in dev as it is written. */
export function browserScripts(): AstroIntegration {
  return {
    name: 'browser-scripts',
    hooks: {
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          if (!/^\/script\/what-if\.js(\?|$)/.test(request.url ?? '')) return next();
          compiled().then(
            (script) => response.setHeader('content-type', 'text/javascript').end(script),
            next,
          );
        });
      },
      'astro:build:done': async ({ dir }) => {
        const folder = fileURLToPath(new URL('script/', dir));
        await mkdir(folder, { recursive: true });
        await writeFile(join(folder, 'what-if.js'), await compiled());
      },
    },
  };
}

/** The script in one piece: no module, nothing fetched, the same bytes from the same sources. */
async function compiled(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [SOURCE],
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
