// `npm run dev`: serves the site while the record is being written; a saved file shows at once.
import { dev } from 'astro';
import { asked, portOf } from './asked.ts';

const USE = 'Use: npm run dev -- [--port 4321].';

async function serve(): Promise<void> {
  const words = asked(USE, { port: { type: 'string' } });
  const port = words && portOf(words.values.port);
  if (port === undefined) {
    if (words) console.error(USE);
    process.exitCode = 2;
    return;
  }
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  const server = await dev({
    root: '.',
    server: { port, host: '127.0.0.1' },
    logLevel: 'warn',
    // Thousands of pictures and the sites that builds make: nothing in there is a source of pages.
    vite: { server: { watch: { ignored: ['**/.cache/**', '**/dist-*/**'] } } },
  });
  console.log(
    `The record is at http://127.0.0.1:${server.address.port}/ — save a log and look. Ctrl-C stops it.`,
  );
}

await serve();
