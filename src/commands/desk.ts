// `npm run desk`: the day is written in the browser, on this machine, or with --lan also on a phone in the shop. Exit 1
// when the record can’t be opened or the port not be used, 2 for wrong use.
import { randomBytes } from 'node:crypto';
import { isIPv4 } from 'node:net';
import { networkInterfaces } from 'node:os';
import { recordAt } from '../desk/lying.ts';
import { pairing } from '../desk/pairing.ts';
import { deskServer } from '../desk/server.ts';
import { recordFolder } from '../disk/open-folder.ts';
import { problemsText } from '../views/problem-text.ts';
import { asked, oneFolder, portOf } from './asked.ts';
import { dayPages } from './desk/day-pages.ts';
import { ended } from './ended.ts';

const USE = `Use: npm run desk -- [--lan [--address 192.168.0.7]] [--port 4321] [folder]. The folder is the record; RECORD or content unless named.
With --lan it answers at this machine’s address in the local network, to whoever says the code that is shown. Where it has several, --address says which.`;

async function desk(): Promise<number> {
  const words = asked(
    USE,
    {
      lan: { type: 'boolean' },
      address: { type: 'string' },
      port: { type: 'string' },
      help: { type: 'boolean' },
    },
    oneFolder,
  );
  if (!words) return 2;
  const { lan = false, address, port: written, help } = words.values;
  if (help) {
    console.log(USE);
    return 0;
  }
  const port = portOf(written);
  if (port === undefined || (address !== undefined && !(lan && isIPv4(address)))) {
    console.error(USE);
    return 2;
  }
  const at = recordAt(words.positionals[0] ?? recordFolder());
  const { opened } = await at.now();
  if (!opened.record) {
    console.error(problemsText(opened.problems, opened.read));
    return 1;
  }
  const host = lan ? (address ?? lanAddress()) : '127.0.0.1';
  if (host === undefined) {
    console.error('This machine has no address in a local network.');
    return 1;
  }
  const token = randomBytes(24).toString('base64url');
  const server = deskServer({
    at,
    token,
    draw: dayPages(at.root),
    ...(lan ? { pairing: pairing((code) => console.log(`Code for the next phone: ${code}`)) } : {}),
  });
  return listen(server, host, port, (at) => {
    console.log(`The desk is at ${at}/?token=${token} — Ctrl-C stops it.`);
    if (lan) console.log(`On a phone in the same network open ${at}/ and type the code.`);
  });
}

/** Listens on the port, or on the next that is free. Resolves when it can’t, else with the first listening. */
function listen(
  server: ReturnType<typeof deskServer>,
  host: string,
  first: number,
  say: (address: string) => void,
): Promise<number> {
  let port = first;
  return new Promise((done) => {
    server.on('error', ({ code }: NodeJS.ErrnoException) => {
      if (code === 'EADDRINUSE' && port < first + 20) {
        port += 1;
        server.listen(port, host);
        return;
      }
      if (code === 'EADDRNOTAVAIL') console.error(`${host} is no address of this machine.`);
      else console.error(`Port ${port} can’t be used (${code}). Name another: npm run desk -- --port 8080.`);
      done(1);
    });
    server.once('listening', () => {
      say(`http://${host}:${port}`);
      done(0);
    });
    server.listen(port, host);
  });
}

/** The first address of this machine that isn’t its own inner one. */
function lanAddress(): string | undefined {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .find(({ family, internal }) => family === 'IPv4' && !internal)?.address;
}

process.exitCode = await ended(desk);
