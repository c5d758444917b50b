// `npm run build`: checks the record and builds the site. What builds it is taken from the last build, bundled and as Node
// made it ready, so that it starts sooner; where nothing was kept, nothing is said and nothing lost.
import { enableCompileCache } from 'node:module';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { keptPages } from './build/compiled.ts';
import { programDigest } from './build/program.ts';

enableCompileCache(join('.cache', 'code'));
const program = programDigest();
const compiled = await keptPages(program);
const { build }: typeof import('./build/command.ts') = await (compiled?.command
  ? import(pathToFileURL(resolve(compiled.command)).href)
  : import('./build/command.ts'));
process.exitCode = await build({ program, compiled });
