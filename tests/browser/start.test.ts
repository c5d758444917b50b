import { createServer } from 'node:http';
import { expect, it, onTestFinished } from 'vitest';
import { emptyFolder } from '../commands/run.ts';
import { serve } from './served.ts';

it('npm start prints an address that answers with the car, and nothing beyond the site', async () => {
  // Its usual port is taken, by us or by another test: the address printed must be the one that answers.
  const another = createServer((_request, response) => response.end('another program'));
  await new Promise<void>((done) => {
    another.once('error', () => done());
    another.listen(4321, '127.0.0.1', done);
  });
  onTestFinished(() => void another.close());

  const address = await serve('start', { ASHFRAME_OUT: await emptyFolder() });
  expect(new URL(address).hostname).toBe('127.0.0.1');
  const answer = await fetch(address);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toContain('Aldermere Fourteen');
  for (const path of ['nothing.html', '..%2fpackage.json', '%2e%2e/%2e%2e/etc/passwd', '%E0%A4%A']) {
    expect((await fetch(new URL(path, address))).status, path).toBe(404);
  }
  expect((await fetch(address)).status).toBe(200);
});
