// The files that the page is made of: styles, type, the drawing, and its script in one classic piece.
import { readFile } from 'node:fs/promises';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};
const at = (path: string) => new URL(`../../${path}`, import.meta.url);

/** A file as it goes to the browser. */
export type Served = { type: string; body: Buffer | string };

/** A file by its path on the desk; nothing for any other path. */
export async function servedFile(path: string): Promise<Served | undefined> {
  const type = TYPES[extname(path)];
  if (type === undefined) return undefined;
  if (path === '/script/desk.js') return { type, body: await compiled() };
  if (path === '/style/desk.css') return { type, body: await readFile(at('src/desk/desk.css')) };
  return isSites(path) ? sitesFile(path) : undefined;
}

/** The site’s own styles, type and sign, as they stand beside its pages. */
const isSites = (path: string) =>
  /^\/(?:favicon\.svg|style\/[a-z]+\.css|style\/fonts\/[a-z0-9-]+\.woff2)$/.test(path);

function sitesFile(path: string) {
  const type = TYPES[extname(path)] ?? '';
  return readFile(at(`public${path}`)).then(
    (body) => ({ type, body }),
    () => undefined,
  );
}

/** The inner markup of the car from above; its looks are the style sheet’s. */
export async function planDrawing(): Promise<string> {
  const svg = await readFile(at('src/site/drawings/plan.svg'), 'utf8');
  return svg
    .slice(svg.indexOf('</style>') + '</style>'.length, svg.lastIndexOf('</svg>'))
    .replaceAll(/ id="[^"]*"/g, '');
}

let script: Promise<string> | undefined;
function compiled(): Promise<string> {
  script ??= build({
    entryPoints: [fileURLToPath(new URL('browser/desk.ts', import.meta.url))],
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
  }).then(({ outputFiles }) => outputFiles[0]?.text ?? '');
  return script;
}
