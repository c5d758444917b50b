// Joins the site to the record in `npm run dev`: web pictures are served, and a saved log is seen.
import { readFile } from 'node:fs/promises';
import { join, sep } from 'node:path';
import type { AstroIntegration } from 'astro';
import { recordFolder } from '../disk/open-folder.ts';
import { photoCache } from '../photos/make.ts';
import { WEB_PICTURE } from '../photos/plan.ts';

/** Serves the web pictures of the record in dev; a build puts them beside the pages. Camera files stay out. */
export function recordPhotos(): AstroIntegration {
  return {
    name: 'record-photos',
    hooks: {
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const [, name = ''] = /^\/photos\/([^/?]+)/.exec(request.url ?? '') ?? [];
          if (!WEB_PICTURE.test(name)) return next();
          readFile(join(photoCache, name)).then(
            (web) => response.setHeader('content-type', 'image/webp').end(web),
            () => next(),
          );
        });
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
