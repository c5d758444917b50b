// The desk on a disk that is full: what is asked of it is answered with one sentence, it goes on, and writes when there
// is room. That a killed desk leaves an entry whole is shown in tests/desk/killed.test.ts.
import { spawn } from 'node:child_process';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { Form, Looked, Told } from '../../src/desk/browser/told.ts';
import { PATIENCE } from '../bad-input/size.ts';
import { emptyFolderFor } from '../commands/run.ts';
import { bytesIn } from '../photos/record-of.ts';
import { layDown, type Shop, shopIn } from './shop.ts';
import { smallDisk } from './small-disk.ts';

/** Starts the desk and gives what its page would ask for; `end` stops it and gives what the terminal showed. */
async function deskAt({ program, record }: Shop, before: string[]) {
  const [first = '', ...rest] = [
    ...before,
    process.execPath,
    'src/commands/desk.ts',
    '--port',
    '4731',
    record,
  ];
  const running = spawn(first, rest, { cwd: program, stdio: ['ignore', 'pipe', 'pipe'] });
  let shown = '';
  running.stderr.setEncoding('utf8').on('data', (more) => {
    shown += more;
  });
  const [, host = '', port = '', token = ''] = await new Promise<string[]>((done, failed) => {
    running.on('close', () => failed(new Error(shown)));
    running.stdout.setEncoding('utf8').on('data', (more) => {
      const at = /http:\/\/(127\.0\.0\.1:(\d+))\/\?token=(\S+)/.exec(more);
      if (at) done(at);
    });
  });
  const headers = { cookie: `desk-${port}=${token}`, origin: `http://${host}` };
  const ask = async (path: string, what?: unknown) => {
    const asked = what === undefined ? {} : { method: 'POST', body: JSON.stringify(what) };
    const answer = await fetch(`http://${host}${path}`, { headers, ...asked });
    return { status: answer.status, text: await answer.text() };
  };
  const end = () =>
    new Promise<string>((done) => {
      running.removeAllListeners('close').on('close', () => done(shown));
      running.kill();
    });
  return { ask, end };
}

type Desk = Awaited<ReturnType<typeof deskAt>>;

/** The form of a day with other words, as its page would send it. */
async function filledIn({ ask }: Desk): Promise<Form> {
  const { text } = await ask('/?day=2025-03-03');
  const [, json = ''] = /id="told">(.*?)<\/script>/s.exec(text) ?? [];
  const { entry, read, by, lists } = JSON.parse(json) as Told;
  return { entry, read, by, lists, words: 'Stripped it, and the lip.' };
}

async function write(desk: Desk, form: Form) {
  const { sign } = JSON.parse((await desk.ask('/look', { form })).text) as Looked;
  return desk.ask('/write', { form, sign });
}

it(
  'says that the disk is full, keeps the record as it is, goes on, and writes when there is room',
  async () => {
    const place = await emptyFolderFor('full-desk');
    const disk = await smallDisk(place.folder, 48_000_000);
    const shop = await shopIn(place.folder);
    await layDown(shop);
    const { before, word } = await disk.full(0);
    const full = await deskAt(shop, before);
    const form = await filledIn(full);
    const held = await bytesIn(shop.record);
    const said = (file: string) => ({
      status: 507,
      text: `${join(shop.record, file)} can’t be written: ${word}, and do the same again.\n`,
    });
    expect(await write(full, form)).toEqual(said('log/2025-03-03.md'));
    expect(await full.ask('/look', { form, typed: true })).toEqual(said('.draft/2025-03-03.desk.json'));
    expect(await bytesIn(shop.record)).toEqual(held);
    expect(await filledIn(full)).toEqual(form);
    // With a disk of its own there is room now for the desk that was refused; else one without the limit is started.
    await disk.roomy();
    expect(await readdir(join(shop.record, 'log'))).toEqual(['2025-03-03.md']);
    const roomy = before.length === 0 ? full : await deskAt(shop, []);
    expect(await write(roomy, form)).toMatchObject({ status: 200 });
    expect(await readFile(join(shop.record, 'log/2025-03-03.md'), 'utf8')).toContain(form.words);
    for (const desk of new Set([full, roomy])) expect(await desk.end()).toBe('');
    await disk.remove();
    await place.remove();
  },
  PATIENCE,
);
