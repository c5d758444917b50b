// What the test files of one run share: the demo's site for each audience, built when the first file asks for it, and the
// browser, unpacked once. The runner calls this before the first test file; it answers them until the last is done.
import { mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import chromiumForLinux from '@sparticuz/chromium';
import type { TestProject } from 'vitest/node';
import { audienceNamed } from '../../src/views/audience.ts';
import { npmRun } from '../commands/run.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where a test file asks for what is shared: see `shared.ts`. */
    shared: string;
  }
}

/** Begins to answer; what is returned ends it, takes the sites away, and fails the run when a test changed one. */
export default async function share(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'ashframe-demo-'));
  const asBuilt = new Map<string, string>();
  const made = new Map<string, Promise<string>>();
  const make = async (name: string): Promise<string> => {
    if (name === 'browser') return chromiumForLinux.executablePath();
    if (!audienceNamed(name)) throw new Error(`Nothing shared is called ${name}.`);
    const site = join(folder, name);
    const { code, out, err } = await npmRun('build', ['--for', name, '--out', site]);
    if (code !== 0) throw new Error(`The build for ${name} ended with ${code}.\n${out}${err}`);
    asBuilt.set(site, await listed(site));
    return site;
  };
  const once = (name: string) => {
    const making = made.get(name) ?? make(name);
    made.set(name, making);
    return making;
  };
  const server = createServer((request, response) => {
    once((request.url ?? '').slice(1)).then(
      (path) => response.end(path),
      (error: Error) => response.writeHead(500).end(error.message),
    );
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  project.provide('shared', `http://127.0.0.1:${(server.address() as AddressInfo).port}/`);

  return async () => {
    await Promise.allSettled(made.values());
    server.close();
    server.closeAllConnections();
    const changed: string[] = [];
    for (const [site, before] of asBuilt) if ((await listed(site)) !== before) changed.push(site);
    await rm(folder, { recursive: true, force: true });
    if (changed.length > 0) throw new Error(`A test changed what all of them read: ${changed.join(', ')}`);
  };
}

/** Every file of a folder with its size and when it was written. */
async function listed(folder: string): Promise<string> {
  const files = (await readdir(folder, { recursive: true })).sort();
  const lines = files.map(async (file) => {
    const { size, mtimeMs } = await stat(join(folder, file));
    return `${file} ${size} ${mtimeMs}`;
  });
  return (await Promise.all(lines)).join('\n');
}
