// Joins the site to the record: web pictures go out beside the pages, and `npm run dev` sees a saved log.
import { copyFile, mkdir, readFile } from 'node:fs/promises';
import { basename, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { readFolder } from '../disk/folder.ts';
import { recordFolder } from '../disk/open-folder.ts';
import { makePhotos, photoCache } from '../photos/make.ts';

/** Copies the web pictures of the record into the built site, and serves them in dev. Camera files stay out. */
export function recordPhotos(): AstroIntegration {
  return {
    name: 'record-photos',
    hooks: {
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const name = /^\/photos\/([0-9a-f]{24}\.webp)$/.exec(request.url ?? '')?.[1];
          if (!name) return next();
          readFile(join(photoCache, name)).then(
            (web) => response.setHeader('content-type', 'image/webp').end(web),
            () => next(),
          );
        });
      },
      'astro:build:done': async ({ dir }) => {
        const folder = recordFolder();
        const photos = await makePhotos(folder, (await readFolder(folder)).photos);
        const out = fileURLToPath(new URL('photos/', dir));
        await mkdir(out, { recursive: true });
        for (const { file } of photos.values())
          await copyFile(join(photoCache, basename(file)), join(out, basename(file)));
      },
    },
  };
}

/** Watches the record's folder in dev: a saved file opens the record anew and reloads the page. */
export function recordWatch(): AstroIntegration {
  const stamped = globalThis as { ashframeStamp?: unknown };
  return {
    name: 'record-watch',
    hooks: {
      'astro:server:setup': ({ server }) => {
        const folder = recordFolder();
        server.watcher.add(folder);
        server.watcher.on('all', (_event, path) => {
          if (!path.startsWith(folder + sep)) return;
          stamped.ashframeStamp = {};
          server.moduleGraph.invalidateAll();
          server.ws.send({ type: 'full-reload' });
        });
      },
    },
  };
}
