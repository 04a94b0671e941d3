import fc from 'fast-check';
import { Bench } from 'tinybench';
import { diagnose } from '../../core/inference/diagnose.ts';
import { evidenceOf } from '../../core/inference/evidence.ts';
import { firstLook } from '../../core/inference/first-look.ts';
import { networkFor } from '../../core/inference/network.ts';
import { solverFor } from '../../core/inference/posterior.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Knowledge } from '../../core/knowledge/types.ts';
import type { PlugReading, ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { TIP_FACETS } from '../../shared/vocabulary/tip.ts';
import { bruteForce, SOLVER_BOUNDS } from '../unit/core/inference/brute-force.ts';
import { anyKnowledge, anySmallSheet } from '../unit/core/inference/small-knowledge.ts';
import { eighteenFullFacets } from './sheets.ts';

/**
 * What a first look and the findings cost on eighteen cylinders with 24 plugs read in every facet: at a sheet not seen before, and after one key stroke,
 * which changes one facet of one plug of a sheet that was just looked at. How both grow with the causes that are known and with the cylinders, nothing
 * being remembered of any sheet, and what the solver saves beside weighing every world, on the one size where both can be done. Medians. Nothing fails
 * here; a benchmark informs, tests decide.
 */
type Work = (sheet: ReadingSheet, knowledge: Knowledge) => unknown;
const WORKS: readonly (readonly [name: string, work: Work])[] = [
  ['first look', (sheet, knowledge) => firstLook(sheet, { knowledge })],
  ['findings', (sheet, knowledge) => diagnose(sheet, { knowledge, digest: 'bench' })],
];
const CAUSES = [40, 80, KNOWLEDGE.causes.length];
const CYLINDERS = [1, 2, 4, 8, 12, 18];
const bench = new Bench({ time: 1000, iterations: 5, warmupTime: 200, warmupIterations: 1 });

/** The tips of the full sheet in another order at every call. */
const tips = eighteenFullFacets.plugs.map(({ tip }) => ({ tip }));
const orders = fc.sample(fc.shuffledSubarray(tips, { minLength: tips.length }), { numRuns: 4000, seed: 1 });
let turn = 0;
const shuffled = <P extends PlugReading>(plugs: readonly P[]): P[] => {
  const order = orders[(turn += 1) % orders.length] ?? [];
  return plugs.map((plug, i) => ({ ...plug, ...order[i] }));
};
const unseen = (): ReadingSheet => ({ ...eighteenFullFacets, plugs: shuffled(eighteenFullFacets.plugs) });

/** The colour that follows in the list. */
const otherNose = ({ tip, ...plug }: PlugReading): PlugReading => {
  const at = TIP_FACETS.noseColour.findIndex((colour) => colour === tip?.noseColour);
  return { ...plug, tip: { ...tip, noseColour: TIP_FACETS.noseColour[(at + 1) % TIP_FACETS.noseColour.length] } };
};
/** The same with another colour of one nose, of another plug at every call. */
const afterKeyStroke = (sheet: ReadingSheet): ReadingSheet =>
  ({ ...sheet, plugs: sheet.plugs.map((plug, i) => (i === turn % sheet.plugs.length ? otherNose(plug) : plug)) });

/** Adds one row. @param next the sheet of each turn, and @param by what it is judged by, both made while no time is taken */
function add(name: string, work: Work, next: () => ReadingSheet, by: () => Knowledge): void {
  let [sheet, knowledge] = [next(), by()];
  bench.add(name, () => { work(sheet, knowledge); }, { beforeEach: () => { [sheet, knowledge] = [next(), by()]; } });
}
const remembering = (): Knowledge => KNOWLEDGE;
/** A copy at every call: what a solver remembers hangs on the very knowledge it was given. */
const afresh = (causes = KNOWLEDGE.causes.length) => (): Knowledge => ({ ...KNOWLEDGE, causes: KNOWLEDGE.causes.slice(0, causes) });

for (const [name, work] of WORKS) {
  add(`24 plugs, 18 cylinders: ${name}, sheet not seen before`, work, unseen, remembering);
  add(`24 plugs, 18 cylinders: ${name}, after one key stroke`, work, () => {
    const before = unseen();
    firstLook(before, { knowledge: KNOWLEDGE });
    return afterKeyStroke(before);
  }, remembering);
  for (const causes of CAUSES) add(`24 plugs, 18 cylinders, causes ${causes}, nothing remembered: ${name}`, work, unseen, afresh(causes));
}

const unseenOf = (cylinders: number): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cycle: 'four-stroke', cylinders, mixture: { kind: 'carburettor' } },
  plugs: shuffled(Array.from({ length: cylinders }, (_, i) => ({ cylinder: i + 1 }))),
});
for (const [name, work] of WORKS)
  for (const cylinders of CYLINDERS) add(`a plug each, cylinders ${cylinders}, nothing remembered: ${name}`, work, () => unseenOf(cylinders), afresh());

const [kb] = fc.sample(anyKnowledge, { numRuns: 1, seed: 1 });
const [small] = fc.sample(anySmallSheet, { numRuns: 1, seed: 1 });
if (kb === undefined || small === undefined) throw new Error('no small network was drawn');
const evidence = evidenceOf(small);
const network = networkFor(kb, evidence);
bench.add('3 causes, 3 conditions, 2 cylinders: every world weighed', () => { bruteForce(network, evidence, SOLVER_BOUNDS); });
bench.add('3 causes, 3 conditions, 2 cylinders: the solver', () => { const fresh = evidenceOf(small); solverFor(networkFor(kb, fresh))(fresh); });
await bench.run();

process.stdout.write(`Node ${process.versions.node} on ${process.platform} ${process.arch}\n`);
for (const { name, result } of bench.tasks) {
  if (result.state !== 'completed') throw new Error(`${name} did not run to its end`);
  process.stdout.write(`${name}: median ${result.latency.p50.toFixed(2)} ms\n`);
}
