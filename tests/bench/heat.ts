import { Bench } from 'tinybench';
import { modelAdvice } from '../../core/heat/model-advice.ts';
import { driveSeconds, prepareDrive, type Phase } from '../../core/thermal/drive.ts';
import { gasAtPlug, tipBand } from '../../core/thermal/tip.ts';
import { sootAfter } from '../../core/soot/nose-soot.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Celsius, Kilopascal } from '../../shared/quantities.ts';
import { duty, gas, plug, REFERENCE } from '../fixtures/heat-engines.ts';

/**
 * How long the heat model takes: a steady point with its band, a ladder of five heat values over twelve loads, a drive of 1180 s in six phases with
 * its soot. Medians and the 99th of a hundred. Nothing fails here; a benchmark informs, tests decide.
 */
const LOADS = Array.from({ length: 12 }, (_, i) => duty({ manifold: 30 + i * 6 }));
const STEPS = [-2, -1, 0, 1, 2];
const PHASES: readonly Phase[] = [
  { seconds: 180, duty: duty({ rpm: 900, manifold: 32, lambda: 0.95, advance: 12 }) },
  { seconds: 200, duty: duty({ rpm: 1800, manifold: 40, lambda: 1, advance: 30 }) },
  { seconds: 200, duty: duty({ rpm: 2500, manifold: 45, lambda: 1, advance: 34 }) }, { seconds: 200, duty: duty({ rpm: 3000, manifold: 60, lambda: 1 }) },
  { seconds: 200, duty: duty({ rpm: 3500, manifold: 80, lambda: 0.95 }) }, { seconds: 200, duty: duty() },
];

function drive(): void {
  const prepared = prepareDrive(REFERENCE, PHASES, 20 as Celsius);
  if (prepared.ok) sootAfter(driveSeconds(prepared.value, REFERENCE, plug()));
}
/** Every call another point, so that nothing is remembered. */
let turn = 0;
const next = (): ReturnType<typeof duty> => { turn += 1; return { ...duty(), manifold: (60 + (turn % 40)) as Kilopascal }; };

/** A full-load reading with everything recorded, at another speed every time. */
const sheet = (): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, plugs: [{ cylinder: 1, fitted: { heatStepsFromSpecified: 0 } }],
  engine: { use: 'road', cylinders: 1, boreMm: 86, strokeMm: 86, compressionRatio: 9.8, fitment: { heat: { scale: 'Ostrin', value: '6' } } },
  conditions: { duty: 'full load', stop: 'clean cut', speedRpm: 4000 + (turn += 1) % 40, lambda: 0.88, advanceDeg: 28 },
});

const bench = new Bench({ time: 2000, warmupTime: 500 });
bench.add('steady point with its band', () => { const felt = gasAtPlug(REFERENCE, next()); if (felt.ok) tipBand(felt.value, plug()); });
bench.add('ladder: 5 heat values, 12 loads', () => { for (const point of LOADS) { const felt = gas(REFERENCE, point); for (const step of STEPS) tipBand(felt, plug(step)); } });
bench.add('drive of 1180 s, 6 phases, soot', drive);
bench.add('the model’s part in the heat advice', () => { modelAdvice(sheet(), 0, false); });
await bench.run();

process.stdout.write(`Node ${process.versions.node} on ${process.platform} ${process.arch}\n`);
for (const { name, result } of bench.tasks) {
  if (result.state !== 'completed') throw new Error(`${name} did not run to its end`);
  process.stdout.write(`${name}: median ${result.latency.p50.toFixed(2)} ms, 99 % under ${result.latency.p99.toFixed(2)} ms\n`);
}
