import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filesIn } from './files.ts';
import { brokenImports } from './import-rule.ts';

describe('the import rule', () => {
  const files = filesIn('src').filter((file) => /\.(ts|astro|mjs|js)$/.test(file));

  it('holds in every file of src', () => {
    expect(files.length).toBeGreaterThan(50);
    expect(files.flatMap((file) => brokenImports(file, readFileSync(file, 'utf8')))).toEqual([]);
  });

  it('names the file, the line and the reason when a figure reaches up to the record', () => {
    const text = "// Days.\nimport { z } from 'zod';\nimport type { Place } from '../record/place.ts';\n";
    expect(brokenImports('src/figures/days.ts', text)).toEqual([
      'src/figures/days.ts:2 imports `zod`: figures may not import zod: figures are the ground floor: every other room stands on them',
      'src/figures/days.ts:3 imports `../record/place.ts`: figures may not import record: figures are the ground floor: every other room stands on them',
    ]);
  });

  it.each([
    ['src/record/open.ts', 'node:fs', 'record may not use node'],
    ['src/record/open.ts', '../estimate/money.ts', 'record may not import estimate'],
    ['src/rollup/roll-up.ts', '../disk/folder.ts', 'rollup may not import disk'],
    ['src/views/costs.ts', 'astro', 'astro belongs to site and commands'],
    ['src/views/costs.ts', '../site/record.ts', 'views may not import site'],
    ['src/commands/build.ts', '../site/layouts/Page.astro', 'commands may not import site'],
    ['src/site/draw.ts', '../rollup/roll-up.ts', 'site may not import rollup'],
    ['src/site/browser/what-if.ts', '../../record/record.ts', 'site/browser may not import record'],
    ['src/disk/folder.ts', 'sharp', 'sharp belongs to photos'],
    ['src/elsewhere/thing.ts', 'zod', 'lies in no room'],
  ])('refuses %s the import of %s', (file, specifier, reason) => {
    expect(brokenImports(file, `import { x } from '${specifier}';\n`)).toEqual([
      expect.stringContaining(reason),
    ]);
  });

  it('reads the scripts of a page and not its words', () => {
    const page =
      "---\nimport Page from '../layouts/Page.astro';\n---\n\n<p>We don't import { z } from 'zod';</p>\n<script>\nimport '../../record/open.ts';\n</script>\n";
    expect(brokenImports('src/site/pages/costs.astro', page)).toEqual([
      expect.stringMatching(/^src\/site\/pages\/costs\.astro:7 imports `\.\.\/\.\.\/record\/open\.ts`/),
    ]);
  });

  it.each([
    ['src/site/record.ts', '../disk/open-folder.ts'],
    ['src/views/costs.ts', '../rollup/roll-up.ts'],
    ['src/commands/check.ts', '../disk/open-folder.ts'],
    ['src/figures/thickness.ts', '../../shared/gauges.json'],
  ])('allows %s the import of %s', (file, specifier) => {
    expect(brokenImports(file, `import { x } from '${specifier}';\n`)).toEqual([]);
  });
});
