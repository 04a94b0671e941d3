import { join } from 'node:path';
import { ESLint } from 'eslint';
import { describe, expect, it } from 'vitest';

const cwd = join(import.meta.dirname, '../..');
const eslint = new ESLint({ cwd, overrideConfigFile: 'tests/architecture/eslint.config.js', warnIgnored: true });

/** What the linter says of a text, as if it stood in a file that exists; only the rule names. */
async function broken(file: string, code: string): Promise<readonly (string | null)[]> {
  const [result] = await eslint.lintText(`${code}\n`, { filePath: join(cwd, file) });
  return result?.messages.map((message) => message.ruleId) ?? [];
}

describe('lint refuses', { timeout: 60_000 }, () => {
  it.each([
    ['the clock in core', 'core/units.ts', 'export const now = new Date();', 'no-restricted-globals'],
    ['the stop watch in core', 'core/units.ts', 'export const now = performance;', 'no-restricted-globals'],
    ['chance in core', 'core/units.ts', 'export const dice = Math.random();', 'no-restricted-properties'],
    ['logging in core', 'core/units.ts', `console.log('x');\nexport {};`, 'no-restricted-globals'],
    ['any', 'core/units.ts', 'export const anything = (x: any): string => String(x);', '@typescript-eslint/no-explicit-any'],
    ['a default export', 'core/units.ts', 'export default 1;', 'no-restricted-syntax'],
    ['Node in the page', 'shared/result.ts', 'export const preferences = { nodeIntegration: true };', 'no-restricted-syntax'],
    ['the sandbox off', 'shared/result.ts', 'export const preferences = { sandbox: false };', 'no-restricted-syntax'],
    ['web security off', 'shared/result.ts', 'export const preferences = { webSecurity: false };', 'no-restricted-syntax'],
    ['a switch that drops the sandbox', 'shared/result.ts', `export const flag = '--no-sandbox';`, 'no-restricted-syntax'],
    ['raw HTML in the page', 'renderer/app/app.tsx', `export const Raw = (): unknown => <p dangerouslySetInnerHTML={{ __html: '' }} />;`, 'no-restricted-syntax'],
    ['a hook in a condition', 'renderer/app/app.tsx', `import { useState } from 'react';\nexport function Box({ on }: { readonly on: boolean }) {\n  if (on) useState(1);\n  return null;\n}`, 'react-hooks/rules-of-hooks'],
    ['a file of more than 300 lines', 'core/units.ts', `export {};${'\n// line'.repeat(300)}`, 'max-lines'],
  ])('%s', async (_what, file, code, rule) => expect(await broken(file, code)).toContain(rule));

  it('nothing in plain arithmetic', async () => {
    expect(await broken('core/units.ts', 'export const half = (n: number): number => n / 2;')).toEqual([]);
  });
});
