import { expect, it } from 'vitest';
import { emptyFolder } from '../commands/run.ts';
import { serve } from './served.ts';

it('npm start prints an address that answers with the car, and nothing beyond the site', async () => {
  const address = await serve('start', { ASHFRAME_OUT: await emptyFolder() });
  expect(new URL(address).hostname).toBe('127.0.0.1');
  const answer = await fetch(address);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toContain('Aldermere Fourteen');
  for (const path of ['nothing.html', '..%2fpackage.json', '%2e%2e/%2e%2e/etc/passwd', '%E0%A4%A']) {
    expect((await fetch(new URL(path, address))).status, path).toBe(404);
  }
  expect((await fetch(address)).status).toBe(200);
}, 180_000);
