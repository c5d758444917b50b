// Puts the program that builds and the compiled pages into a few files with the packages they use: a thousand small
// modules take longer to find and load than many a page to draw. `compiled.ts` runs it in a process of its own.
import { build } from 'esbuild';

/** Packages that bring a binary, which is found beside them. */
const BINARY = ['sharp', '@napi-rs/canvas'];

/** Packages in the older module format ask for what comes with Node by `require`. */
const REQUIRE = `import { createRequire as requireOf } from 'node:module';
const require = requireOf(import.meta.url);`;

// Nobody waits for it any more.
process.on('disconnect', () => process.exit(1));
const [pages, into] = process.argv.slice(2);
if (pages !== undefined && into !== undefined) {
  await build({
    entryPoints: {
      command: 'src/commands/build/command.ts',
      thread: 'src/commands/build/ahead-thread.ts',
      pages,
    },
    outdir: into,
    outExtension: { '.js': '.mjs' },
    banner: { js: REQUIRE },
    external: BINARY,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'error',
  });
  process.exit(0);
}
