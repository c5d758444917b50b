// The ways in which the desk answers: a sentence, plain values, a page, or another address.
import type { IncomingMessage, ServerResponse } from 'node:http';
import { MOST } from './body.ts';
import type { Refusal } from './entrance.ts';

export function tooLarge(request: IncomingMessage, response: ServerResponse): void {
  response.setHeader('connection', 'close');
  refuse(response, {
    status: 413,
    says: `That is too large: a picture may have ${MOST.photo / 1e6} MB, a day’s form ${MOST.form / 1e6} MB.`,
  });
  // What still comes isn’t read; the answer gets its moment to leave first.
  response.once('finish', () => setTimeout(() => request.destroy(), 200));
}

export function refuse(response: ServerResponse, { status, says }: Refusal): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' }).end(`${says}\n`);
}

export function told(response: ServerResponse, status: number, what: unknown): void {
  response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(what));
}

export function page(response: ServerResponse, html: string, status = 200): void {
  response.writeHead(status, { 'content-type': 'text/html; charset=utf-8' }).end(html);
}

export function away(response: ServerResponse, to: string, cookie: string): void {
  response.writeHead(303, { location: to, 'set-cookie': cookie }).end();
}
