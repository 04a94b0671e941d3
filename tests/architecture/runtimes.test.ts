import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import ts from 'typescript';

const root = join(import.meta.dirname, '../..');

/** What the type check of one folder says of a file planted in it, among all that the folder's own files bring in. */
function complaints(folder: string, code: string): readonly string[] {
  const config = ts.getParsedCommandLineOfConfigFile(join(root, folder, 'tsconfig.json'), { composite: false, noEmit: true, emitDeclarationOnly: false, declaration: false }, {
    ...ts.sys, onUnRecoverableConfigFileDiagnostic: (problem) => { throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, '\n')); },
  });
  if (!config) throw new Error(`${folder}/tsconfig.json cannot be read`);
  const planted = join(root, folder, 'planted-breach.ts');
  const host = ts.createCompilerHost(config.options);
  const withPlanted: ts.CompilerHost = {
    ...host,
    fileExists: (file) => file === planted || host.fileExists(file),
    getSourceFile: (file, target, ...rest) => (file === planted ? ts.createSourceFile(file, code, target) : host.getSourceFile(file, target, ...rest)),
  };
  const program = ts.createProgram([...config.fileNames, planted], config.options, withPlanted);
  return program.getSemanticDiagnostics(program.getSourceFile(planted)).map((problem) => ts.flattenDiagnosticMessageText(problem.messageText, '\n'));
}

const BREACHES = {
  'the DOM': 'export const breach = document.title;',
  'a Node global': 'export const breach = process.env;',
  'a Node module': `import { readFileSync } from 'node:fs';\nexport const breach = readFileSync;`,
  logging: `console.log('breach');\nexport {};`,
} as const;

describe('a folder does not compile with', () => {
  it.each([
    ['core', 'the DOM'], ['core', 'a Node global'], ['core', 'a Node module'], ['core', 'logging'],
    ['shared', 'the DOM'], ['shared', 'a Node global'], ['shared', 'a Node module'], ['shared', 'logging'],
    ['renderer', 'a Node global'], ['renderer', 'a Node module'],
    ['electron', 'the DOM'],
  ] as const)('%s: %s', (folder, breach) => {
    expect(complaints(folder, BREACHES[breach])).toEqual([expect.stringMatching(/Cannot find (name|module)/)]);
  });

  it.each([['renderer', 'the DOM'], ['electron', 'a Node global'], ['electron', 'a Node module']] as const)('but %s does with %s', (folder, powers) => {
    expect(complaints(folder, BREACHES[powers])).toEqual([]);
  });
});
