import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../run/vitest.ts';

const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');

describe('the README', () => {
  it('shows what the command line really prints', () => {
    const [, file] = /diagnose -- (\S+) --text/.exec(readme) ?? [];
    const shown = /```\n([\s\S]*?)```/.exec(readme)?.[1]?.split('\n').filter((line) => line.trim() !== '' && line !== '...') ?? [];
    const printed = spawnSync(process.execPath, ['electron/start/gate.mjs', 'electron/cli/diagnose.ts', file ?? '', '--text'], { cwd: ROOT, encoding: 'utf8' }).stdout.split('\n');
    expect(shown.length).toBeGreaterThan(10);
    expect(shown.filter((line) => !printed.includes(line))).toEqual([]);
  });

  it('shows only pictures that are there', () => {
    const pictures = [...readme.matchAll(/!\[[^\]]*\]\(([^)]+)\)/g)].map((match) => match[1] ?? '');
    expect(pictures.length).toBeGreaterThan(3);
    expect(pictures.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });

  it('names only scripts that package.json has', () => {
    const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { scripts: Record<string, string> };
    const named = [...readme.matchAll(/npm run (?:--silent )?([a-z0-9:-]+)/g)].map((match) => match[1] ?? '');
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});
