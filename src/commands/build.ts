// `npm run build`: checks the record and builds the site. What Node makes of the program's code is kept for the next build,
// which starts sooner; where it can't be kept, nothing is said and nothing lost.
import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

enableCompileCache(join('.cache', 'code'));
await import('./build/command.ts');
