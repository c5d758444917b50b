// Joins the site to the record in `npm run dev`: web pictures are served, and a saved log is seen.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { AstroIntegration } from 'astro';
import { handToPages } from '../disk/handed.ts';
import { recordFolder } from '../disk/open-folder.ts';
import { watchFolder } from '../disk/watch-folder.ts';
import { photoCache } from '../photos/make.ts';
import { pictureAt } from '../photos/plan.ts';
import { followed } from './followed.ts';

/** Serves the web pictures of the record in dev; a build puts them beside the pages. Camera files stay out. */
export function recordPhotos(): AstroIntegration {
  return {
    name: 'record-photos',
    hooks: {
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const picture = pictureAt(/^\/([^?]*)/.exec(request.url ?? '')?.[1] ?? '');
          if (picture === undefined) return next();
          readFile(join(photoCache, picture)).then(
            (web) => response.setHeader('content-type', 'image/webp').end(web),
            () => next(),
          );
        });
      },
    },
  };
}

/** How long the folder must have been quiet before a save is followed, in milliseconds: a save is several changes. */
const QUIET = 30;

/**
 * Watches the record's folder in dev: a saved file opens the record anew, and the page is loaded again from it. What is
 * asked for meanwhile waits for it. No module is read in again: none holds anything of the record but by the record
 * itself, and what Astro knows of the pages that there are is forgotten.
 */
export function recordWatch(): AstroIntegration {
  return {
    name: 'record-watch',
    hooks: {
      'astro:server:setup': ({ server }) => {
        // Who draws single pages in a server that doesn’t listen hands them their record, and wants nothing watched.
        if (server.config.server.middlewareMode) return;
        const folder = recordFolder();
        const open = followed(folder);
        let opening = Promise.resolve();
        const show = async () => {
          // Where it can't be opened the pages try for themselves, and say why.
          handToPages(await open().catch(() => undefined));
          for (const environment of Object.values(server.environments))
            environment.hot.send('astro:content-changed', {});
          server.ws.send({ type: 'full-reload' });
        };
        const ended = new AbortController();
        server.httpServer?.once('close', () => ended.abort());
        server.middlewares.use((_request, _response, next) => void opening.then(() => next(), next));
        void watchFolder(folder, () => (opening = show()), ended.signal, QUIET);
      },
    },
  };
}
