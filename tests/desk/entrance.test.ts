import { mkdir, readdir, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder } from '../commands/run.ts';
import { openDesk, smallFolder, TOKEN } from './at-desk.ts';

const FORM = JSON.stringify({
  form: { entry: '2025-03-04', read: '', by: '', lists: {}, words: 'A day.' },
  sign: '',
});

describe('the desk lets in', () => {
  it('whoever has the token, by a cookie from then on, and keeps nothing in the browser', async () => {
    const { ask, known } = await openDesk(await smallFolder());
    const first = await ask(`/?token=${TOKEN}`, { headers: {} });
    expect(first.status).toBe(303);
    expect(first.headers.location).toBe('/');
    expect(first.headers['set-cookie']?.[0]).toMatch(
      /^desk-\d+=a-token-for-tests; Path=\/; HttpOnly; SameSite=Strict$/,
    );
    const page = await known('/?day=2025-03-03');
    expect(page.status).toBe(200);
    expect(page.text).toContain('Stripped it.');
    expect(page.headers['cache-control']).toBe('no-store');
    expect(page.headers['content-security-policy']).toMatch(/^default-src 'none'; script-src 'self';/);
  });
});

describe('the desk refuses', () => {
  it.each(['/', '/?token=another', '/?token=', '/picture?day=2025-03-03&file=a.jpg', '/style/ashframe.css'])(
    '%s without the token',
    async (path) => {
      const { ask } = await openDesk(await smallFolder());
      const { status, text } = await ask(path);
      expect(status).toBe(403);
      expect(text).toBe('Open the desk by the whole address that the terminal shows.\n');
    },
  );

  it('a wrong token in the cookie', async () => {
    const { ask, own } = await openDesk(await smallFolder());
    const { status } = await ask('/', {
      headers: { cookie: own.cookie.replace(TOKEN, 'b-token-for-tests') },
    });
    expect(status).toBe(403);
  });

  it.each(['/write', '/look', '/picture?day=2025-03-03&name=a.jpg'])(
    'a page on another origin that asks for %s, and one that says none',
    async (path) => {
      const folder = await smallFolder();
      const { known, ask, own } = await openDesk(folder);
      for (const origin of [
        'http://elsewhere.example',
        'http://127.0.0.1:1',
        'null',
        own.origin.replace('http', 'https'),
      ]) {
        const { status, text } = await known(path, { method: 'POST', headers: { origin }, body: FORM });
        expect([status, text]).toEqual([403, 'Only the desk’s own page may ask for this.\n']);
      }
      const none = await ask(path, { method: 'POST', headers: { cookie: own.cookie }, body: FORM });
      expect(none.status).toBe(403);
      expect(await readdir(join(folder, 'log'))).toEqual(['2025-03-03.md']);
    },
  );

  it('a picture that another site puts into its page', async () => {
    const { ask, own } = await openDesk(await smallFolder());
    const headers = { cookie: own.cookie, 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' };
    expect((await ask('/', { headers })).status).toBe(403);
  });

  it('a Host that isn’t its own, also where that name leads here', async () => {
    const { known, host } = await openDesk(await smallFolder());
    for (const name of [
      'elsewhere.example',
      `localhost:${host.split(':')[1]}`,
      '127.0.0.1',
      `${host}.elsewhere.example`,
    ]) {
      const { status, text } = await known('/', { headers: { host: name } });
      expect([status, text]).toEqual([421, `This is the desk at http://${host}/, and no other.\n`]);
    }
  });

  it('a path that leads elsewhere', async () => {
    const { known } = await openDesk(await smallFolder());
    for (const path of [
      '/../../etc/passwd',
      '/style/..%2f..%2fpackage.json',
      '/style/fonts/../../../package.json',
      '/script/../desk.css',
      '/picture?day=2025-03-03&file=../../car.md',
      '/picture?day=..&file=x.jpg',
      '/picture?day=2025-03-03&file=photos/../car.md',
    ])
      expect((await known(path)).status, path).toBe(404);
    for (const day of ['../../etc', '2025-02-30', '2025-03-03/..', '2025-03-03-zz'])
      expect((await known(`/?day=${encodeURIComponent(day)}`)).status, day).toBe(404);
  });

  it('a form that names another file, and whatever is no form', async () => {
    const folder = await smallFolder();
    const { known } = await openDesk(folder);
    const form = (entry: string) => FORM.replace('2025-03-04', entry);
    const named = await known('/write', { method: 'POST', body: form('../../2025-03-04') });
    expect([named.status, JSON.parse(named.text).refused]).toEqual([422, expect.any(String)]);
    const long = await known('/write', { method: 'POST', body: form('../../../../../../2025-03-04') });
    const none = await known('/write', { method: 'POST', body: '{"form":{}}' });
    for (const { status } of [long, none]) expect(status).toBe(400);
    const big = await known('/look', { method: 'POST', body: `"${'x'.repeat(1_000_001)}"` });
    expect(big.status).toBe(413);
    expect(await readdir(join(folder, 'log'))).toEqual(['2025-03-03.md']);
  });

  it('a folder of the log that leads out of the record', async () => {
    const folder = await smallFolder();
    const outside = await emptyFolder();
    await mkdir(join(folder, 'photos'));
    await symlink(outside, join(folder, 'photos/2025-03-03'));
    const { known } = await openDesk(folder);
    const jpeg = Buffer.from('\xff\xd8\xff', 'latin1');
    const { status, text } = await known('/picture?day=2025-03-03&name=a.jpg', {
      method: 'POST',
      body: jpeg,
    });
    expect([status, JSON.parse(text).refused]).toEqual([
      422,
      'photos/2025-03-03 leads out of the record, so nothing is put there.',
    ]);
    expect(await readdir(outside)).toEqual([]);
  });
});
