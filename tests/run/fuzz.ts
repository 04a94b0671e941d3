import { availableParallelism } from 'node:os';
import { parentPort, Worker, workerData } from 'node:worker_threads';
import fc from 'fast-check';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { anySheet } from '../unit/core/inference/any-sheet.ts';
import { disturbedSet } from '../unit/core/inference/disturbed-set.ts';
import { guarded } from '../unit/core/inference/guarded.ts';
import { healthyStaysHealthy, plainSheet, relabellingRelabels, surerMovesFurther, unobservedChangesNothing } from '../unit/core/inference/invariants.ts';

/**
 * Holds many random sheets against what the program must never do: `npm run fuzz -- [sheets] [minutes] [seed]`. Half of them are drawn freely, half are
 * sooty sets disturbed in a few places; every fifty sheets, one more is held against the laws of probability. Stops at the first breach.
 */
type Count = { sheets: number; hotter: number; colder: number; laws: number };
type Share = { readonly sheets: number; readonly minutes: number; readonly seed: number };
type Said = { readonly count: Count } | { readonly breach: string };

const ROUND = 50;
const LAWS: readonly (readonly [arbitrary: fc.Arbitrary<ReadingSheet>, breaches: (sheet: ReadingSheet) => readonly string[]])[] = [
  [anySheet, unobservedChangesNothing], [anySheet, surerMovesFurther], [anySheet, relabellingRelabels], [plainSheet, healthyStaysHealthy],
];

function tryOne(sheet: ReadingSheet, breaches: readonly string[]): void {
  if (breaches.length > 0) throw new Error(`${breaches.join('; ')}\n${JSON.stringify(sheet)}`);
}

function tryRound(seed: number, round: number, count: Count): void {
  const free = fc.sample(round % 2 === 0 ? anySheet : disturbedSet, { numRuns: ROUND, seed: seed + round });
  for (const sheet of free) {
    const { step, breaches } = guarded(sheet);
    tryOne(sheet, breaches);
    count.sheets += 1;
    if (step === 1) count.hotter += 1;
    if (step === -1) count.colder += 1;
  }
  const [arbitrary, breachesOf] = LAWS[round % LAWS.length]!;
  for (const sheet of fc.sample(arbitrary, { numRuns: 1, seed: seed + round })) tryOne(sheet, breachesOf(sheet));
  count.laws += 1;
}

function work({ sheets, minutes, seed }: Share, say: (said: Said) => void): void {
  const count: Count = { sheets: 0, hotter: 0, colder: 0, laws: 0 };
  const end = performance.now() + 60_000 * minutes;
  try {
    for (let round = 0; count.sheets < sheets && performance.now() < end; round += 1) tryRound(seed, round, count);
    say({ count });
  } catch (error) {
    say({ breach: error instanceof Error ? error.message : String(error) });
  }
}

const inThread = (share: Share): Promise<Said> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(new URL(import.meta.url), { workerData: share });
    worker.once('message', resolve);
    worker.once('error', reject);
  });

async function main([sheets = 200_000, minutes = 120, seed = Date.now() % 1e9]: readonly number[]): Promise<void> {
  const threads = availableParallelism();
  process.stdout.write(`fuzz: ${sheets} sheets in ${threads} threads, at most ${minutes} minutes, seed ${seed}\n`);
  const share = (i: number): Share => ({ sheets: Math.ceil(sheets / threads), minutes, seed: seed + i * 1_000_000 });
  const said = await Promise.all(Array.from({ length: threads }, (_, i) => inThread(share(i))));
  const counts = said.flatMap((one) => ('count' in one ? [one.count] : []));
  const sum = (of: (count: Count) => number): number => counts.reduce((all, count) => all + of(count), 0);
  for (const one of said) if ('breach' in one) process.stdout.write(`BREACH ${one.breach}\n`);
  process.stdout.write(`fuzz: ${sum((c) => c.sheets)} sheets held against the guards, ${sum((c) => c.hotter)} advised one step hotter, ${sum((c) => c.colder)} one step colder; `
    + `${sum((c) => c.laws)} sheets held against the laws of probability\n`);
  if (counts.length < said.length) process.exitCode = 1;
}

if (parentPort === null) await main(process.argv.slice(2).map(Number));
else work(workerData as Share, (said) => parentPort?.postMessage(said));
