// Draws the compiled pages of the record that was handed to them, one file a page.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { StaticPaths } from 'astro/runtime/prerender/static-paths.js';
import { STANDS, type Standing } from './standing.ts';

/** What Astro compiles pages into. Pages that bring no styles and scripts of their own need nothing of the build. */
type PagesApp = ConstructorParameters<typeof StaticPaths>[0] & {
  logger: unknown;
  routeCache: { clearAll: () => void };
  setInternals: (internals: object) => void;
  setOptions: (options: object) => void;
  render: (request: Request, options: { routeData: object }) => Promise<Response>;
};

/** Sources of pages that rest on the draws of choices. */
const LATE = /^src\/site\/pages\/(?:choice\/|choices\.|forecast\.|index\.|earned\.)/;

/**
 * Draws every page into a folder; of those that stand it asks `takeOver` first. Pages that rest on the draws of choices
 * come last, after `drawn`.
 */
export async function drawPages(
  pages: string,
  out: string,
  { takeOver, drawn }: { takeOver: Standing['takeOver']; drawn: () => Promise<void> },
): Promise<void> {
  const { app } = (await import(pathToFileURL(resolve(pages)).href)) as { app: PagesApp };
  app.setInternals({ pagesByKeys: new Map() });
  app.setOptions({ settings: { scripts: [] }, logger: app.logger });
  // A second build in one process has other paths.
  app.routeCache.clearAll();
  const made = new Set<string>();
  const all = await new StaticPaths(app).getAll();
  const isLate = ({ route }: (typeof all)[number]) => LATE.test(route.component);
  for (const page of all) if (!isLate(page)) await drawPage(page);
  await drawn();
  for (const page of all) if (isLate(page)) await drawPage(page);

  async function drawPage({ pathname, route }: (typeof all)[number]): Promise<void> {
    const file = fileOf(pathname, route.type);
    const url = new URL(encodeURI(`/${file}`), 'http://localhost');
    const render = () => app.render(new Request(url), { routeData: route });
    const path = join(out, file);
    const first = await render();
    if (!first.body && first.status !== STANDS) return;
    if (!made.has(dirname(path))) mkdirSync(dirname(path), { recursive: true });
    made.add(dirname(path));
    if (first.status === STANDS && takeOver(file, path)) return;
    const response = first.status === STANDS ? await render() : first;
    writeFileSync(path, Buffer.from(await response.arrayBuffer()));
  }
}

/** The file of a page within the site, as `build.format: 'file'` has it. */
function fileOf(pathname: string, type: string): string {
  const path = pathname.replace(/^\/|\/$/g, '');
  return type === 'endpoint' ? path : `${path || 'index'}.html`;
}
