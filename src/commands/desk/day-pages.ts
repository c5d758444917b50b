// Draws the site’s own page of a day for the desk. What draws is read in when the first page is asked for, and stays; it
// listens nowhere and watches nothing.
import { getViteConfig } from 'astro/config';
import { createServer, type InlineConfig } from 'vite';
import type { Draws } from '../../desk/preview.ts';
import { handToPages } from '../../disk/handed.ts';

/** Pages as the shop’s own site has them, drawn one after the other. Throws when the site can’t be read in. */
export function dayPages(root: string): Draws {
  let site: Promise<Draws> | undefined;
  let last: Promise<unknown> = Promise.resolve();
  const draw: Draws = async (entry, opened) => {
    site ??= readIn(root);
    try {
      return await (await site)(entry, opened);
    } catch (error) {
      // What stood in the way may be gone the next time.
      site = undefined;
      throw error;
    }
  };
  return (entry, opened) => {
    const next = last.then(() => draw(entry, opened));
    last = next.catch(() => undefined);
    return next;
  };
}

async function readIn(root: string): Promise<Draws> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  process.env.ASHFRAME_FOR = 'shop';
  const quiet: InlineConfig = {
    server: { middlewareMode: true, hmr: false, ws: false, watch: null },
    appType: 'custom',
    logLevel: 'error',
    optimizeDeps: { noDiscovery: true, include: [] },
  };
  const config = getViteConfig(quiet, { root: '.', logLevel: 'error' });
  const server = await createServer({
    ...(await config({ mode: 'development', command: 'serve' })),
    configFile: false,
  });
  const { drawnPage } = await server.ssrLoadModule('/src/site/drawn-day.ts');
  return (entry, { opened, today, made }) => {
    handToPages({ opened: { ...opened, folder: root, today }, made });
    return drawnPage(entry);
  };
}
