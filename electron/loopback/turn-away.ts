import type { IncomingMessage, ServerResponse } from 'node:http';
import { PAGE_HEADERS } from '../node/page-policy.ts';

const WAY_BACK = [
  'Corenose opens only by the address that "npm start" printed last; each start has its own.',
  'Go on in the window that it opened. If there is none, end the program with Ctrl-C and start it again: what was saved is in your library.',
];

const asPage = (words: readonly string[]): string =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Corenose</title><h1>Corenose</h1>${words.map((line) => `<p>${line.replaceAll('"', '&quot;')}</p>`).join('')}`;

/** Answers one who may not come in: a person in a browser reads how to get back, a program a line of text. */
export function turnAway(request: IncomingMessage, response: ServerResponse): void {
  const person = request.method === 'GET' && request.headers.accept?.includes('text/html') === true;
  response.writeHead(403, { ...PAGE_HEADERS, 'content-type': `text/${person ? 'html' : 'plain'}; charset=utf-8`, connection: 'close' })
    .end(person ? asPage(WAY_BACK) : `${WAY_BACK.join(' ')}\n`);
}
