// `npm run dev`: serves the site while the record is being written; a saved file shows at once.
import { parseArgs } from 'node:util';
import { dev } from 'astro';

process.env.ASTRO_TELEMETRY_DISABLED = '1';
const { values } = parseArgs({ options: { port: { type: 'string' } } });
const port = values.port === undefined ? 4321 : Number(values.port);
const server = await dev({ root: '.', server: { port, host: '127.0.0.1' }, logLevel: 'warn' });
console.log(
  `The record is at http://127.0.0.1:${server.address.port}/ — save a log and look. Ctrl-C stops it.`,
);
