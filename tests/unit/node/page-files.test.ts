import { mkdirSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../electron/main/scheme.ts';
import { pageFile, pathInside } from '../../../electron/node/page-files.ts';
import { PAGE_POLICY } from '../../../electron/node/page-policy.ts';
import { temporaryFolder } from '../../fixtures/temporary-folder.ts';

/** A page folder with a secret beside it and a sibling whose name begins alike. */
function builtPage(): string {
  const around = temporaryFolder();
  for (const folder of ['page', 'page/assets', 'page-private']) mkdirSync(join(around, folder));
  writeFileSync(join(around, 'page/index.html'), '<!doctype html>');
  writeFileSync(join(around, 'page/assets/a b.js'), 'export {}');
  writeFileSync(join(around, 'page/notes.txt'), 'not part of a page');
  for (const secret of ['secret.html', 'page-private/secret.html']) writeFileSync(join(around, secret), 'secret');
  return join(around, 'page');
}

const TRAVERSALS = [
  '/../secret.html', '/..%2fsecret.html', '/..%2Fsecret.html', '/%2e%2e/secret.html', '/%2e%2e%2fsecret.html', '/..\\secret.html', '/..%5csecret.html',
  '/assets/../../secret.html', '/assets/..%2f..%2fsecret.html', '/../page-private/secret.html', '/..%2fpage-private%2fsecret.html', '//secret.html', '/..',
  '/%00', '/index.html%00.js', '/%', '/%E0%A4%A', '/C:/secret.html', '/C:%5csecret.html', '/.', '/./', '/assets', '/assets/', '/notes.txt', '/missing.js',
];

describe('the files of the page', () => {
  it('are given out by their address, the first page for the bare one', async () => {
    const folder = builtPage();
    expect(await pageFile(folder, '/')).toMatchObject({ type: 'text/html; charset=utf-8' });
    expect(await pageFile(folder, '/index.html')).toMatchObject({ type: 'text/html; charset=utf-8' });
    expect(await pageFile(folder, '/assets/a%20b.js')).toMatchObject({ type: 'text/javascript; charset=utf-8' });
  });

  it.each(TRAVERSALS)('end at the folder: %s gives nothing', async (pathname) => {
    expect(await pageFile(builtPage(), pathname)).toBeNull();
  });

  it('lie inside the folder whatever is asked', () => {
    const parts = fc.array(fc.constantFrom('..', '.', '%2e%2e', '%2f', '..%2f', '%5c', '\\', '/', 'a', '%00', ':', '//', '%252e%252e'), { maxLength: 12 });
    fc.assert(fc.property(parts, (pieces) => {
      const file = pathInside('/srv/page', `/${pieces.join('')}`);
      return file === null || file.startsWith(`${sep}srv${sep}page${sep}`);
    }), { numRuns: 5000 });
  });
});

describe('the own scheme', () => {
  it('answers GET on its own host, with the security policy', async () => {
    const response = await answer({ method: 'GET', url: 'corenose://app/index.html' }, builtPage());
    expect(response.status).toBe(200);
    expect(response.headers.get('content-security-policy')).toBe(PAGE_POLICY);
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
  });

  it.each(['POST', 'PUT', 'DELETE', 'HEAD', 'OPTIONS'])('does not answer %s', async (method) => {
    expect((await answer({ method, url: 'corenose://app/index.html' }, builtPage())).status).toBe(405);
  });

  it.each(['corenose://other/index.html', 'corenose://app.example/index.html', 'corenose:///index.html', ...TRAVERSALS.filter((path) => !/^\/\.+\/?$/.test(path)).map((path) => `corenose://app${path}`)])('gives nothing for %s', async (url) => {
    expect((await answer({ method: 'GET', url }, builtPage())).status).toBe(404);
  });
});

describe('the security policy of the page', () => {
  it('lets nothing in but the page\'s own files', () => {
    const rules: Record<string, string[]> = Object.fromEntries(PAGE_POLICY.split('; ').map((rule) => [rule.split(' ')[0] ?? '', rule.split(' ').slice(1)]));
    expect(rules['default-src']).toEqual(["'none'"]);
    for (const kind of ['script-src', 'style-src', 'font-src', 'connect-src']) expect(rules[kind]).toEqual(["'self'"]);
    for (const kind of ['base-uri', 'form-action', 'frame-ancestors']) expect(rules[kind]).toEqual(["'none'"]);
    expect(PAGE_POLICY).not.toMatch(/unsafe|data:|https?:|\*/);
  });
});
