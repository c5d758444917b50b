// The bare Astro site that ours is measured against: as many pages at the same addresses, each with the same body as
// ours, put in as it stands, and the same pictures; no layout, no components, no sums. It builds and serves as ours does.
import { cp, mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { PICTURES } from '../../photos/plan.ts';
import { putAside } from './aside.ts';

export const BARE = join('.cache', 'bench', 'bare');

/**
 * Lays the project down anew from a site that was built; gives the addresses of its pages, without `.html`. One to be
 * built has two scripts: `build.mjs`, and `parse.mjs`, which parses the front matter and the words of the `texts` first,
 * as any site made from a record must.
 */
export async function layDownBare(
  site: string,
  use: { for: 'dev' } | { for: 'build'; texts: readonly string[] },
): Promise<string[]> {
  await putAside(BARE);
  const pages = await pagesOf(site);
  if (use.for === 'build') {
    await cp(join(site, PICTURES), join(BARE, 'public', PICTURES), { recursive: true });
    await put('texts.json', JSON.stringify(use.texts));
    await put('parse.mjs', PARSE);
  }
  for (const page of pages) {
    const html = await readFile(join(site, `${page}.html`), 'utf8');
    await put(join('src', 'bodies', `${page}.txt`), /<body[^>]*>([\s\S]*)<\/body>/.exec(html)?.[1] ?? html);
  }
  await put('package.json', '{ "name": "bare", "private": true, "type": "module" }\n');
  await put(join('src', 'pages', '[...page].astro'), template(frontMatter[use.for]));
  await put(join('src', 'bodies.js'), BODIES);
  await put('build.mjs', script("await build({ ...config, outDir: './dist' });", 'build'));
  await put(
    'dev.mjs',
    script('await dev({ ...config, server: { host: "127.0.0.1", port: Number(process.argv[2]) } });', 'dev'),
  );
  return pages;
}

/** The pages of a built site by their paths without `.html`. */
export async function pagesOf(site: string): Promise<string[]> {
  const files = await readdir(site, { recursive: true });
  return files
    .filter((file) => file.endsWith('.html'))
    .map((file) => file.slice(0, -'.html'.length))
    .sort();
}

async function put(file: string, text: string): Promise<void> {
  await mkdir(dirname(join(BARE, file)), { recursive: true });
  await writeFile(join(BARE, file), text);
}

const frontMatter = {
  // Nothing is cheaper than reading a body when its page is drawn.
  build: `import { readdirSync, readFileSync } from 'node:fs';
export function getStaticPaths() {
  const files = readdirSync('src/bodies', { recursive: true }).filter((file) => file.endsWith('.txt'));
  return files.map((file) => {
    const page = file.slice(0, -'.txt'.length);
    return { params: { page: page === 'index' ? undefined : page }, props: { file } };
  });
}
const body = readFileSync('src/bodies/' + Astro.props.file, 'utf8');`,
  // Bodies are modules, so that a saved one is followed as Astro follows any; texts, since pages would be searched for scripts.
  dev: `import { bodies } from '../bodies.js';
export function getStaticPaths() {
  return Object.keys(bodies).map((file) => {
    const page = file.slice('./bodies/'.length, -'.txt'.length);
    return { params: { page: page === 'index' ? undefined : page }, props: { file } };
  });
}
const body = await bodies[Astro.props.file]();`,
};

const BODIES = `export const bodies = import.meta.glob('./bodies/**/*.txt', { query: '?raw', import: 'default' });
`;

const PARSE = `import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { parse } from 'yaml';
const markdown = unified().use(remarkParse).use(remarkGfm).freeze();
const parsed = [];
for (const path of JSON.parse(readFileSync(join(import.meta.dirname, 'texts.json'), 'utf8'))) {
  const [, front = '', body = ''] = /^---\\n([\\s\\S]*?)\\n---\\n([\\s\\S]*)$/.exec(readFileSync(path, 'utf8')) ?? [];
  parsed.push([parse(front), markdown.parse(body)]);
}
console.log(parsed.length);
await import('./build.mjs');
`;

const template = (front: string) => `---
${front}
---
<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Bare</title></head><body set:html={body} /></html>
`;

const script = (run: string, name: string) => `import { ${name} } from 'astro';
process.env.ASTRO_TELEMETRY_DISABLED = '1';
const config = {
  root: import.meta.dirname,
  configFile: false,
  logLevel: 'error',
  compressHTML: true,
  build: { format: 'file' },
  devToolbar: { enabled: false },
};
${run}
`;
