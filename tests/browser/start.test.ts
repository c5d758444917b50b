import { expect, it } from 'vitest';
import { serve } from './served.ts';

it('npm start prints an address that answers with the car', async () => {
  const address = await serve('start');
  expect(new URL(address).hostname).toMatch(/^(localhost|127\.0\.0\.1)$/);
  const answer = await fetch(address);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toContain('Aldermere Fourteen');
}, 180_000);
