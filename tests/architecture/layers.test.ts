import { cp, mkdir, mkdtemp, realpath, rm, symlink, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser';

const root = join(import.meta.dirname, '../..');
const layers = createRequire(import.meta.url)('./layers.cjs') as { forbidden: readonly { name: string }[]; options: ICruiseOptions };

/** One breach a rule: the files it takes. An import of `x` also writes the file it points at, unless it is a package. */
const BREACHES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'shared-is-the-floor': { 'shared/floor.ts': `import '../core/above.ts';`, 'core/above.ts': '' },
  'core-is-pure': { 'core/reads-disk.ts': `import 'node:fs';` },
  'page-not-host': { 'renderer/grabs-host.ts': `import type {} from '../electron/node/host.ts';`, 'electron/node/host.ts': '' },
  'page-no-builtins': { 'renderer/uses-path.ts': `import 'node:path';` },
  'host-not-page': { 'electron/main/draws.ts': `import '../../renderer/button.ts';`, 'renderer/button.ts': '' },
  'node-without-electron': { 'electron/node/opens-window.ts': `import 'electron';` },
  'preload-names-only': { 'electron/preload/knows-schemas.ts': `import '../../shared/channels.ts';`, 'shared/channels.ts': '' },
  'features-by-their-face': { 'renderer/features/tray/peeks.ts': `import '../findings/inside.ts';`, 'renderer/features/findings/inside.ts': '' },
  'state-and-ui-below-features': { 'renderer/ui/climbs.ts': `import '../features/log/index.ts';`, 'renderer/features/log/index.ts': '' },
  'nothing-imports-tests': { 'core/leans.ts': `import '../tests/fixture.ts';`, 'tests/fixture.ts': '' },
  'no-cycles': { 'core/egg.ts': `import './hen.ts';`, 'core/hen.ts': `import './egg.ts';` },
  'no-running-cycles': { 'renderer/state/slice.ts': `import './whole.ts';`, 'renderer/state/whole.ts': `import './slice.ts';` },
  'no-missing-import': { 'core/gone.ts': `import './nowhere.ts';` },
  'no-undeclared-package': { 'renderer/borrows.ts': `import 'acorn';` },
};

async function plant(tree: string, files: Readonly<Record<string, string>>): Promise<void> {
  for (const [file, text] of Object.entries(files)) {
    await mkdir(join(tree, dirname(file)), { recursive: true });
    await writeFile(join(tree, file), text === '' ? 'export {};\n' : `${text}\n`);
  }
}

describe('layer rules', () => {
  let tree = '';
  let broken: ReadonlySet<string> = new Set();

  beforeAll(async () => {
    tree = await realpath(await mkdtemp(join(tmpdir(), 'corenose-layers-')));
    await cp(join(root, 'package.json'), join(tree, 'package.json'));
    await symlink(join(root, 'node_modules'), join(tree, 'node_modules'), 'junction');
    for (const files of Object.values(BREACHES)) await plant(tree, files);
    broken = await violations(tree);
  }, 60_000);
  afterAll(() => rm(tree, { recursive: true, force: true }));

  it('each have a planted breach to prove them', () => {
    expect(Object.keys(BREACHES).sort()).toEqual(layers.forbidden.map((rule) => rule.name).sort());
  });

  it.each(Object.entries(BREACHES))('report the breach of %s', (rule, files) => {
    expect([...broken]).toContain(`${rule}: ${Object.keys(files)[0] ?? ''}`);
  });

  it('leave a slice that names only the type of its store alone', async () => {
    const clean = join(tree, 'types-only');
    await plant(clean, { 'renderer/state/slice.ts': `import type {} from './whole.ts';\nexport {};`, 'renderer/state/whole.ts': `import './slice.ts';` });
    expect([...(await violations(clean))]).toEqual([]);
  });
});

async function violations(baseDir: string): Promise<ReadonlySet<string>> {
  const { output } = await cruise(['.'], { ...layers.options, baseDir, validate: true, ruleSet: { forbidden: layers.forbidden as never } });
  return new Set((output as ICruiseResult).summary.violations.map(({ rule, from }) => `${rule.name}: ${from}`));
}
