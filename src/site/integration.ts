// Joins the site to the record: web pictures go out beside the pages, and `npm run dev` sees a saved log.
import { readFile } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { openFolder, recordFolder } from '../disk/open-folder.ts';
import { makePhotos, photoCache } from '../photos/make.ts';
import { WEB_PICTURE } from '../photos/plan.ts';
import { publishPhotos } from '../photos/publish.ts';
import { forAudience } from '../record/audience.ts';
import { audienceNamed } from '../views/audience.ts';
import { namedPhotos } from '../views/photos.ts';

/** Copies the web pictures of the record into the built site, and serves them in dev. Camera files stay out. */
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
      'astro:build:done': async ({ dir }) => {
        const { record, folder } = await openFolder(recordFolder());
        if (!record) return;
        const named = namedPhotos(forAudience(record, audienceNamed(process.env.ASHFRAME_FOR) ?? 'history'));
        const { photos } = await makePhotos(folder, record.photos);
        const shown = [...photos].flatMap(([file, photo]) => (named.has(file) ? [photo] : []));
        await publishPhotos(shown, fileURLToPath(new URL('photos/', dir)));
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
