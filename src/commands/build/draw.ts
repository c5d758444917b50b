// Draws the compiled pages of the record that was handed to them, one file a page.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { StaticPaths } from 'astro/runtime/prerender/static-paths.js';
import { once } from '../../record/once.ts';
import type { Sees } from '../../views/audience.ts';
import type { MayStand } from '../../views/shown/compared.ts';
import type { Standing } from './standing.ts';

/** What Astro compiles pages into. Pages that bring no styles and scripts of their own need nothing of the build. */
type PagesApp = ConstructorParameters<typeof StaticPaths>[0] & {
  logger: unknown;
  routeCache: {
    clearAll: () => void;
    get: (
      route: object,
    ) => { staticPaths: { keyed: Map<string, { params: object; props?: object }> } } | undefined;
  };
  getComponentByRoute: (route: object) => Promise<object>;
  setInternals: (internals: object) => void;
  setOptions: (options: object) => void;
  render: (request: Request, options: { routeData: object; locals: object }) => Promise<Response>;
};

type Pages = { app: PagesApp; StaticPaths: new (app: PagesApp) => StaticPaths };

/** What a page that may stand exports. */
type Component = { shows?: MayStand<object, object, object> };

/** Sources of pages that rest on what is drawn ahead; the last of them on what is drawn after it. */
const LATE = /^src\/site\/pages\/(?:choice\/|choices\.|costs\.|index\.|earned\.)/;
const LAST = /^src\/site\/pages\/forecast\./;

/**
 * Draws every page that an audience `sees` into a folder, but for those that are `takenOver`. Pages that rest on what is drawn
 * ahead come last, after `drawn`.
 */
export async function drawPages(
  pages: string,
  out: string,
  { sees, takenOver, drawn }: { sees: Sees; takenOver: Standing['takenOver']; drawn: () => Promise<void> },
): Promise<void> {
  const { app, StaticPaths } = (await import(pathToFileURL(resolve(pages)).href)) as Pages;
  app.setInternals({ pagesByKeys: new Map() });
  app.setOptions({ settings: { scripts: [] }, logger: app.logger });
  // A second build in one process has other paths.
  app.routeCache.clearAll();
  const made = new Set<string>();
  const componentOf = once((route: object) => app.getComponentByRoute(route) as Promise<Component>);
  const all = await new StaticPaths(app).getAll();
  for (const turn of [0, 1, 2]) {
    if (turn > 0) await drawn();
    for (const page of all) if (turnOf(page.route) === turn) await drawPage(page);
  }

  async function drawPage({ pathname, route }: (typeof all)[number]): Promise<void> {
    const file = fileOf(pathname, route.type);
    if (!sees.has(file)) return;
    const path = join(out, file);
    if (!made.has(dirname(path))) mkdirSync(dirname(path), { recursive: true });
    made.add(dirname(path));
    const { shows } = await componentOf(route);
    const { params = {}, props = {} } = route.pathname
      ? {}
      : (app.routeCache.get(route)?.staticPaths.keyed.get(pathname) ?? {});
    const shown = await shows?.shown(params, props);
    if (shows && shown && takenOver(file, await shows.texts(shown), path)) return;
    const url = new URL(encodeURI(`/${file}`), 'http://localhost');
    const locals = shown ? { shown } : {};
    const response = await app.render(new Request(url), { routeData: route, locals });
    if (response.body) writeFileSync(path, Buffer.from(await response.arrayBuffer()));
  }
}

/** When a page is drawn: what it rests on is drawn ahead until then. */
function turnOf({ component }: { component: string }): number {
  if (LAST.test(component)) return 2;
  return LATE.test(component) ? 1 : 0;
}

/** The file of a page within the site, as `build.format: 'file'` has it. */
function fileOf(pathname: string, type: string): string {
  const path = pathname.replace(/^\/|\/$/g, '');
  return type === 'endpoint' ? path : `${path || 'index'}.html`;
}
