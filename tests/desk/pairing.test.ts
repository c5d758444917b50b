import { describe, expect, it } from 'vitest';
import { pairing } from '../../src/desk/pairing.ts';
import { openDesk, smallFolder, TOKEN } from './at-desk.ts';

/** Codes one after the other, and a clock that is set by hand. */
function paired() {
  const shown: string[] = [];
  let time = 0;
  let n = 0;
  const way = pairing(
    (code) => shown.push(code),
    () => time,
    () => String(++n).repeat(6),
  );
  return { way, shown, wait: (ms: number) => (time += ms) };
}

describe('a code', () => {
  it('is good once', () => {
    const { way, shown } = paired();
    expect(way.try('111 111')).toBe('in');
    expect(way.try('111111')).toBe('wrong');
    expect(shown).toEqual(['111111', '222222']);
  });

  it('is another after five wrong tries, and nobody comes in for a minute', () => {
    const { way, shown, wait } = paired();
    const tries = ['000000', '', '11111', '1111111', '999999'].map((code) => way.try(code));
    expect(tries).toEqual(['wrong', 'wrong', 'wrong', 'wrong', 'rest']);
    expect(shown).toEqual(['111111', '222222']);
    expect(way.try('222222')).toBe('rest');
    wait(59_999);
    expect(way.try('222222')).toBe('rest');
    wait(1);
    expect(way.try('111111')).toBe('wrong');
    expect(way.try('222222')).toBe('in');
  });

  it('has six figures, by chance', () => {
    const shown: string[] = [];
    for (let n = 0; n < 20; n++) pairing((code) => shown.push(code));
    expect(shown.every((code) => /^\d{6}$/.test(code))).toBe(true);
    expect(new Set(shown).size).toBeGreaterThan(15);
  });
});

describe('a phone', () => {
  it('is asked for the code, and let in by it', async () => {
    const { way } = paired();
    const { ask, known, own } = await openDesk(await smallFolder(), way);
    const asks = await ask('/');
    expect(asks.status).toBe(401);
    expect(asks.text).toContain('shows a code of six figures');
    expect(asks.text).not.toContain('Cowl');
    expect((await ask('/script/desk.js')).status).toBe(403);
    const pair = (code: string, origin = own.origin) =>
      ask('/pair', { method: 'POST', headers: { origin }, body: `code=${code}` });
    expect((await pair('111111', 'http://elsewhere.example')).status).toBe(403);
    expect((await pair('999999')).text).toContain('That isn’t the code');
    const came = await pair('111111');
    expect(came.status).toBe(303);
    expect(came.headers['set-cookie']?.[0]).toContain(TOKEN);
    expect((await known('/')).status).toBe(200);
    for (let n = 0; n < 5; n++) await pair('000000');
    const { status, text } = await pair('222222');
    expect(status).toBe(429);
    expect(text).toContain('Too many wrong codes.');
  });
});
