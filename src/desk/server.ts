// The desk: one page, what it asks for, and the checks that stand before all of it.
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { diskFaultText } from '../disk/disk-fault.ts';
import { isDay } from '../figures/days.ts';
import { photoPath } from '../record/record.ts';
import { away, page, refuse, told, tooLarge } from './answers.ts';
import { bodyText, MOST, TooLarge } from './body.ts';
import type { Form, Looked } from './browser/told.ts';
import { draftEntries, dropDraft, keepDraft } from './draft.ts';
import { isKnown, isSame, letIn, type Refusal, strange } from './entrance.ts';
import { liesWithin } from './entry-of.ts';
import { readForm } from './form.ts';
import { looked } from './looked.ts';
import type { RecordAt } from './lying.ts';
import { deskPage, pairingPage } from './page.ts';
import type { Pairing } from './pairing.ts';
import { pictureIn, smallPicture } from './pictures.ts';
import { type Draws, type Preview, type Previews, previews, SHOWN_ONLY } from './preview.ts';
import { planDrawing, servedFile } from './served.ts';
import { toldOf } from './told.ts';
import { written } from './written.ts';

/** `pairing` is there where a phone may come in by a code, `draw` where the site’s pages can be drawn. */
export type Desk = {
  at: RecordAt;
  token: string;
  pairing?: Pairing | undefined;
  draw?: Draws | undefined;
};

/** The server, not listening yet. It answers at the address that it comes to listen on, and at no other name. */
export function deskServer(desk: Desk): Server {
  const turns = oneByOne();
  const pages = desk.draw && previews(desk.draw, desk.at);
  const server = createServer((request, response) => {
    const where = server.address();
    const [host, port] = typeof where === 'object' && where ? [where.address, where.port] : ['', 0];
    const here: Here = { host: `${host}:${port}`, cookie: `desk-${port}`, turns, pages };
    answer(desk, request, response, here).catch((error) => {
      if (error instanceof TooLarge) return tooLarge(request, response);
      const said = diskFaultText(error);
      if (said !== undefined && !response.headersSent) return refuse(response, { status: 507, says: said });
      if (!response.headersSent)
        refuse(response, { status: 500, says: 'The desk can’t do that; see the terminal.' });
      if ((error as NodeJS.ErrnoException).code !== 'ECONNRESET') console.error(error);
    });
  });
  return server;
}

type Here = {
  host: string;
  cookie: string;
  turns: ReturnType<typeof oneByOne>;
  pages: Previews | undefined;
};

async function answer(
  desk: Desk,
  request: IncomingMessage,
  response: ServerResponse,
  { host, cookie, turns, pages }: Here,
): Promise<void> {
  for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
  const no = strange(request, host);
  if (no) return refuse(response, no);
  const url = new URL(request.url ?? '/', `http://${host}`);
  const doing = `${request.method} ${url.pathname}`;
  if (doing === 'GET /' && isSame(url.searchParams.get('token') ?? '', desk.token)) {
    url.searchParams.delete('token');
    return away(response, `/${url.search}`, letIn(cookie, desk.token));
  }
  if (!isKnown(request, cookie, desk.token)) return outside(desk, request, response, doing, cookie);
  switch (doing) {
    case 'GET /':
      return turns(() => thePage(desk, response, url.searchParams.get('day')));
    case 'GET /picture':
      return turns(() => thePicture(desk, response, url.searchParams));
    case 'POST /picture': {
      const [day, name] = ['day', 'name'].map((key) => url.searchParams.get(key) ?? '');
      if (!day || !name || !isDay(day)) return refuse(response, NO_SUCH);
      const came = await turns(() => pictureIn(desk.at, request, day, name));
      return told(response, 'refused' in came ? 422 : 200, came);
    }
    case 'POST /look':
    case 'POST /preview':
    case 'POST /throw-away':
    case 'POST /write': {
      const asked = readForm(await bodyText(request, MOST.form));
      if (!asked) return refuse(response, { status: 400, says: 'That is no form of this desk.' });
      if (doing === 'POST /look')
        return told(response, 200, await turns(() => lookedAndKept(desk.at, asked)));
      if (doing === 'POST /throw-away') {
        await turns(() => dropDraft(desk.at, asked.form.entry));
        return told(response, 200, { said: 'Thrown away.' });
      }
      if (doing === 'POST /preview') {
        // What is drawn waits for nobody’s turn, so that nobody who types waits for it.
        const seen = await turns(() => looked(desk.at, asked.form));
        return told(response, 200, pages ? await pages.of(asked.form, seen) : NO_PAGES);
      }
      const done = await turns(async () => {
        const so = await written(desk.at, asked.form, asked.sign);
        if ('said' in so) await dropDraft(desk.at, asked.form.entry);
        return so;
      });
      return told(response, 'said' in done ? 200 : done.looked?.conflict ? 409 : 422, done);
    }
  }
  if (request.method !== 'GET') return refuse(response, NO_SUCH);
  const preview = await pages?.at(url.pathname);
  if (preview) response.setHeader('content-security-policy', SHOWN_ONLY);
  const file = preview ?? (await servedFile(url.pathname));
  if (!file) return refuse(response, NO_SUCH);
  response.setHeader('content-type', file.type).end(file.body);
}

/** Looks at a form; what was typed is kept until it is written. */
async function lookedAndKept(at: RecordAt, { form, typed }: { form: Form; typed: boolean }): Promise<Looked> {
  const seen = await looked(at, form);
  const kept = typed ? await keepDraft(at, form, seen) : undefined;
  return { ...seen.told, ...(kept === undefined ? {} : { kept }) };
}

/** Who isn’t let in yet sees the page that asks for the code, where there is one, and its style. */
async function outside(
  { pairing, token }: Desk,
  request: IncomingMessage,
  response: ServerResponse,
  doing: string,
  cookie: string,
): Promise<void> {
  if (!pairing)
    return refuse(response, {
      status: 403,
      says: 'Open the desk by the whole address that the terminal shows.',
    });
  if (doing === 'POST /pair') {
    const code = new URLSearchParams(await bodyText(request, MOST.code)).get('code') ?? '';
    const so = pairing.try(code);
    if (so === 'in') return away(response, '/', letIn(cookie, token));
    return page(response, pairingPage(SO[so]), so === 'rest' ? 429 : 403);
  }
  if (doing === 'GET /') return page(response, pairingPage(''), 401);
  const file = /^GET \/(style\/|favicon)/.test(doing)
    ? await servedFile(doing.slice('GET '.length))
    : undefined;
  if (!file) return refuse(response, { status: 403, says: 'Pair with the desk first.' });
  response.setHeader('content-type', file.type).end(file.body);
}

const SO = {
  wrong: 'That isn’t the code that the terminal shows now.',
  rest: 'Too many wrong codes. The terminal shows another; try it in a minute.',
};

async function thePage({ at }: Desk, response: ServerResponse, asked: string | null): Promise<void> {
  const { lying, opened } = await at.now();
  const told = await toldOf(at, asked || lying.today);
  if (typeof told === 'string') return refuse(response, { status: 404, says: told });
  const entries = (opened.record?.entries ?? []).map(({ id }) => id).reverse();
  const car = opened.record?.car.name ?? 'The record';
  const drafts = (await draftEntries(at)).filter((entry) => entry !== told.entry);
  const around = { car, entries, drafts, today: lying.today, drawing: await planDrawing() };
  return page(response, deskPage(told, around));
}

async function thePicture({ at }: Desk, response: ServerResponse, asked: URLSearchParams): Promise<void> {
  const path = photoPath(asked.get('file') ?? '', asked.get('day') ?? '');
  const { lying } = await at.now();
  const there = lying.photos.includes(path) && (await liesWithin(at.root, path));
  const picture = there ? await smallPicture(at.root, path) : undefined;
  if (!picture) return refuse(response, NO_SUCH);
  response.setHeader('content-type', 'image/webp').end(picture);
}

const NO_PAGES: Preview = { refused: 'Pages can’t be drawn here. Writing goes on as before.' };
const NO_SUCH: Refusal = { status: 404, says: 'There is nothing of that name at the desk.' };
const HEADERS = {
  'cache-control': 'no-store',
  'content-security-policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; frame-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'same-origin',
  'x-content-type-options': 'nosniff',
};

/** What reads or writes the record takes turns: two things asked at once can’t cross. */
function oneByOne() {
  let last: Promise<unknown> = Promise.resolve();
  return <T>(work: () => Promise<T>): Promise<T> => {
    const next = last.then(work, work);
    last = next.catch(() => undefined);
    return next;
  };
}
