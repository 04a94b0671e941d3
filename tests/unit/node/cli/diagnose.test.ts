import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { FILE_LIMIT_BYTES } from '../../../../electron/cli/input.ts';
import { findings } from '../../../../shared/formats/findings.v1.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const root = fileURLToPath(new URL('../../../..', import.meta.url));
const scripts = (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> }).scripts;

const single = { format: 'corenose.reading-sheet', version: 1, engine: { use: 'small', cylinders: 1 }, plugs: [{ cylinder: 1, tip: { deposit: 'dry soot' } }] };

/** Runs the command of package.json as npm would. */
function diagnose(args: readonly string[], input = ''): { status: number | null; stdout: string; stderr: string } {
  const [, ...command] = (scripts['diagnose'] ?? '').split(' ');
  const { status, stdout, stderr } = spawnSync(process.execPath, [...command, ...args], { cwd: root, input, encoding: 'utf8' });
  return { status, stdout, stderr };
}

function fileWith(content: string | Uint8Array): string {
  const file = join(temporaryFolder(), 'sheet.json');
  writeFileSync(file, content);
  return file;
}

describe('npm run diagnose', () => {
  it('prints findings that follow their format, from a file and from standard input alike', () => {
    const fromFile = diagnose([fileWith(JSON.stringify(single))]);
    expect(fromFile).toMatchObject({ status: 0, stderr: '' });
    expect(findings.parse(JSON.parse(fromFile.stdout)).plugs[0]?.verdict).toBe('dry carbon fouling');
    expect(fromFile.stdout).toBe(`${JSON.stringify(JSON.parse(fromFile.stdout), null, 2)}\n`);
    expect(diagnose(['-'], JSON.stringify(single)).stdout).toBe(fromFile.stdout);
  });

  it('prints the same for people, in lines that fit a terminal', () => {
    const { status, stdout, stderr } = diagnose([fileWith(JSON.stringify(single)), '--text']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toContain('Cylinder 1: dry carbon fouling');
    expect(stdout).toContain('Cautions');
    expect(stdout.split('\n').filter((line) => line.length > 100)).toEqual([]);
  });

  it.each([
    ['no file', [], 'no file given; use npm run --silent diagnose -- FILE.json [--text]'],
    ['an unknown option', ['--colour', 'sheet.json'], '--colour: unknown option; allowed are --text, --since EARLIER.json and --shop LINES.json'],
    ['a reading before that is not named', ['sheet.json', '--since', '--text'], '--since: no file given; name the sheet of an earlier reading'],
    ['two files', ['a.json', 'b.json'], '2 files given'],
    ['a file that is not there', ['nowhere.json'], 'nowhere.json: there is no such file'],
  ])('refuses %s', (_what, args, words) => {
    const { status, stdout, stderr } = diagnose(args);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr.split('\n')).toEqual([expect.stringContaining(words) as string, '']);
  });

  it('compares with an earlier sheet of the same engine', () => {
    const later = { ...single, plugs: [{ cylinder: 1, tip: { deposit: 'light dusting', noseColour: 'light tan' } }] };
    const { status, stdout } = diagnose([fileWith(JSON.stringify(later)), '--text', '--since', fileWith(JSON.stringify(single))]);
    expect(status).toBe(0);
    expect(stdout).toContain('Since the reading before\n  Cylinder 1 is better.');
    expect(stdout.split('\n').filter((line) => line.length > 100)).toEqual([]);
  });

  it('refuses an earlier sheet that does not fit the engine, and a second one', () => {
    const twin = fileWith(JSON.stringify({ ...single, engine: { use: 'small', cylinders: 2 }, plugs: [{ cylinder: 2 }] }));
    expect(diagnose([fileWith(JSON.stringify(single)), '--since', twin]).stderr).toBe(`${twin}: plugs.0.cylinder: there is no cylinder 2; allowed are 1 to 1\n`);
    const compared = fileWith(JSON.stringify({ ...single, since: { reading: { plugs: [{ cylinder: 1 }] } } }));
    expect(diagnose([compared, '--since', twin]).stderr).toContain('tells of a reading before already');
  });

  it('judges by lines of a workshop as well, says so, and marks what rests on them', () => {
    const says = { kind: 'moved', of: 'choke-stuck', when: { tag: 'stored long' }, how: 'far likelier' };
    const line = { id: 'sticky-chokes', on: true, by: 'Ann', because: 'Every second one here comes in with it.', says };
    const lines = (more: object): string => fileWith(JSON.stringify({ format: 'corenose.shop-lines', version: 1, lines: [{ ...line, ...more }] }));
    const sheet = fileWith(JSON.stringify({ ...single, engine: { use: 'small', cylinders: 1, mixture: { kind: 'carburettor' } }, conditions: { tags: ['stored long'] } }));
    const belief = (args: readonly string[]): number =>
      findings.parse(JSON.parse(diagnose(args).stdout)).plugs[0]?.causes.find(({ id }) => id.startsWith('choke-stuck'))?.belief ?? 0;
    expect(belief([sheet, '--shop', lines({})])).toBeGreaterThan(2 * belief([sheet]));
    expect(belief([sheet, '--shop', lines({ on: false })])).toBe(belief([sheet]));
    const { stdout } = diagnose([sheet, '--text', '--shop', lines({})]);
    expect(stdout).toContain('[own line, Ann]');
    expect(stdout).toContain('Lines of the workshop that took part\n  - choke-stuck moved by stored long. Every second one here comes in with it. (Ann)');
    expect(stdout.split('\n').filter((each) => each.length > 100)).toEqual([]);
    const refused = lines({ because: 'because', says: { ...says, of: 'sticky-choke' } });
    const { status, stderr } = diagnose([sheet, '--shop', refused]);
    expect(status).toBe(2);
    expect(stderr).toContain(`${refused}: lines.0.of: There is nothing called "sticky-choke" that a line of this kind can speak of; did you mean choke-stuck?`);
  });

  it('refuses a folder, a file that is too large, and text that is not UTF-8', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'sheet.json'));
    const words = (file: string): string => { const { status, stdout, stderr } = diagnose([file]); expect({ status, stdout }).toEqual({ status: 2, stdout: '' }); return stderr; };
    expect(words(join(folder, 'sheet.json'))).toContain('this is a folder; give a file');
    expect(words(fileWith(' '.repeat(FILE_LIMIT_BYTES + 1)))).toContain('too large; at most 8 MB are read');
    expect(words(fileWith(Uint8Array.of(0x7b, 0xff, 0xfe, 0x7d)))).toContain('not UTF-8 text');
    expect(diagnose(['-'], ' '.repeat(FILE_LIMIT_BYTES + 1)).stderr).toBe('standard input: too large; at most 8 MB are read\n');
  });

  it('tells every problem of a sheet on a line of its own, with its path and what is allowed', () => {
    const wrong = { ...single, engine: { use: 'space', cylinders: 2.5, colour: 'red' }, plugs: [{ cylinder: 0 }] };
    const { status, stdout, stderr } = diagnose([fileWith(JSON.stringify(wrong))]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    const expected = [
      'engine.use: "space" is not allowed; allowed are road, competition, marine',
      'engine.cylinders: 2.5 is not a whole number; give cylinders from 1 to 18',
      'engine.colour: unknown field; allowed are name, use, cycle',
      'plugs.0.cylinder: 0 is too small; give a cylinder number from 1 to 18',
    ];
    expect(stderr.split('\n')).toEqual([...expected.map((start) => expect.stringContaining(start) as string), '']);
  });

  it('tells where a file stops being JSON', () => {
    expect(diagnose([fileWith('{\n  "format": corenose\n}')])).toEqual({ status: 2, stdout: '', stderr: '(top): not JSON: invalid symbol at line 2, column 13\n' });
  });
});
