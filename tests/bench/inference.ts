import fc from 'fast-check';
import { Bench } from 'tinybench';
import { diagnose } from '../../core/inference/diagnose.ts';
import { evidenceOf } from '../../core/inference/evidence.ts';
import { networkFor } from '../../core/inference/network.ts';
import { solverFor } from '../../core/inference/posterior.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { bruteForce, SOLVER_BOUNDS } from '../unit/core/inference/brute-force.ts';
import { anyKnowledge, anySmallSheet } from '../unit/core/inference/small-knowledge.ts';

/**
 * How the cost of a diagnosis grows with the cylinders, and what the solver saves beside weighing every world, on the one size where both can be done.
 * Medians. Nothing fails here; a benchmark informs, tests decide.
 */
const CYLINDERS = [1, 2, 4, 8, 12, 18];
const sheetFor = (cylinders: number): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cycle: 'four-stroke', cylinders, mixture: { kind: 'carburettor' } },
  plugs: Array.from({ length: cylinders }, (_, i) => ({ cylinder: i + 1, tip: { noseColour: 'black', noseSurface: 'matt soot', deposit: i % 4 === 2 ? 'wet oil' : 'dry soot' } })),
});

const [kb] = fc.sample(anyKnowledge, { numRuns: 1, seed: 1 });
const [small] = fc.sample(anySmallSheet, { numRuns: 1, seed: 1 });
if (kb === undefined || small === undefined) throw new Error('no small network was drawn');
const evidence = evidenceOf(small);
const network = networkFor(kb, evidence);

const bench = new Bench({ time: 1000, iterations: 5, warmupTime: 200, warmupIterations: 1 });
bench.add('3 causes, 3 conditions, 2 cylinders: every world weighed', () => { bruteForce(network, evidence, SOLVER_BOUNDS); });
bench.add('3 causes, 3 conditions, 2 cylinders: the solver', () => { const fresh = evidenceOf(small); solverFor(networkFor(kb, fresh))(fresh); });
for (const cylinders of CYLINDERS) {
  const sheet = sheetFor(cylinders);
  bench.add(`all that is known, ${cylinders} cylinders: diagnose`, () => { diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'bench' }); });
}
await bench.run();

process.stdout.write(`Node ${process.versions.node} on ${process.platform} ${process.arch}\n`);
for (const { name, result } of bench.tasks) {
  if (result.state !== 'completed') throw new Error(`${name} did not run to its end`);
  process.stdout.write(`${name}: median ${result.latency.p50.toFixed(2)} ms\n`);
}
