import { Bench } from 'tinybench';
import { diagnose, type Given } from '../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import { parseReadingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { benchPhotos } from './photos.ts';
import { eighteenFullFacets, eighteenTwinPlug, fourCylinders } from './sheets.ts';

/**
 * How long a diagnosis takes, as a multiple of reading and checking the same sheet's text in the same run: machines differ, the ratio hardly does. Then
 * photos, what the inference costs as it grows, and in a real browser how soon the verdicts follow a key stroke. Times are medians.
 * Nothing fails here; a benchmark informs, tests decide.
 */
/** A copy at every call: what a solver remembers hangs on the very knowledge it was given. */
const afresh = (): Given => ({ knowledge: { ...KNOWLEDGE }, digest: 'bench' });
const SHEETS: readonly (readonly [string, ReadingSheet])[] = [['4 cylinders', fourCylinders], ['18 cylinders, 36 plugs', eighteenTwinPlug],
  ['18 cylinders, 24 plugs in every facet', eighteenFullFacets]];

const bench = new Bench({ time: 2000, iterations: 5, warmupTime: 200, warmupIterations: 1 });
for (const [name, sheet] of SHEETS) {
  const text = JSON.stringify(sheet);
  bench.add(`parse ${name}`, () => { parseReadingSheet(JSON.parse(text)); });
  bench.add(`diagnose ${name}`, () => { diagnose(sheet, afresh()); });
}
await bench.run();

function medianMs(name: string): number {
  const result = bench.getTask(name)?.result;
  if (result?.state !== 'completed') throw new Error(`${name} did not run to its end`);
  return result.latency.p50;
}

process.stdout.write(`Node ${process.versions.node} on ${process.platform} ${process.arch}\n`);
for (const [name] of SHEETS) {
  const [parse, diagnosis] = [medianMs(`parse ${name}`), medianMs(`diagnose ${name}`)];
  process.stdout.write(`${name}: diagnose ${diagnosis.toFixed(1)} ms, ${(diagnosis / parse).toFixed(0)} times parse and check (${parse.toFixed(2)} ms)\n`);
}
process.stdout.write(await benchPhotos());
await import('./inference.ts');
await import('./typing.ts');
