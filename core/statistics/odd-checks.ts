import type { Engine } from '../../shared/formats/engine.ts';
import type { CylinderCheck } from '../../shared/formats/reading-sheet.v1.ts';
import { differentialLoss, medianOf, oddCylinder } from './odd-cylinder.ts';

/** Measurements that every cylinder of an engine should share. */
const ODD_CHECKS = ['compression', 'leak-down', 'differential', 'exhaust'] as const;
export type OddCheck = (typeof ODD_CHECKS)[number];

/** What a set of measurements shows: the one cylinder that differs, that none is shown to, or that there are too few to say. */
export type OddAnswer = { readonly check: OddCheck; readonly count: number } & (
  { readonly verdict: 'shown'; readonly cylinder: number } | { readonly verdict: 'not shown' | 'too few' }
);

type Kind = {
  readonly of: (check: CylinderCheck) => number | undefined;
  /** One deviation of the gauge. */
  readonly repeatability: (median: number) => number;
};

/** Grades: compression common practice, the others judgement. Units: kPa; share of the air; °C. */
const KINDS: Readonly<Record<OddCheck, Kind>> = {
  compression: { of: ({ compressionKPa }) => compressionKPa, repeatability: (median) => 0.03 * median },
  'leak-down': { of: ({ leakDownPercent }) => (leakDownPercent === undefined ? undefined : leakDownPercent / 100), repeatability: () => 0.02 },
  differential: { of: ({ differential: d }) => (d === undefined ? undefined : differentialLoss(d.heldKPa, d.supplyKPa)), repeatability: () => 0.02 },
  exhaust: { of: ({ egtC }) => egtC, repeatability: () => 10 },
};

type Measured = { readonly cylinder: number; readonly value: number };

/** A whole weak bank is no outlier of the engine: where every bank has three values, each is counted from the middle of its own bank. */
function withoutBanks(measured: readonly Measured[], { banks = [] }: Engine): readonly Measured[] {
  const of = (bank: readonly number[]): readonly Measured[] => measured.filter(({ cylinder }) => bank.includes(cylinder));
  if (banks.length < 2 || banks.some((bank) => of(bank).length < 3)) return measured;
  return measured.map(({ cylinder, value }) => {
    const own = of(banks.find((bank) => bank.includes(cylinder)) ?? []);
    return { cylinder, value: value - (own.length === 0 ? 0 : medianOf(own.map((one) => one.value))) };
  });
}

function answerFor(check: OddCheck, checks: readonly CylinderCheck[], engine: Engine): readonly OddAnswer[] {
  const { of, repeatability } = KINDS[check];
  const measured = checks.flatMap((one): readonly Measured[] => {
    const value = of(one);
    return value === undefined ? [] : [{ cylinder: one.cylinder, value }];
  });
  const count = measured.length;
  if (count < 2) return [];
  const odd = oddCylinder(withoutBanks(measured, engine).map(({ value }) => value), repeatability(medianOf(measured.map(({ value }) => value))));
  const cylinder = odd.verdict === 'shown' ? measured[odd.index]?.cylinder : undefined;
  if (odd.verdict !== 'shown') return [{ check, count, verdict: odd.verdict }];
  return cylinder === undefined ? [] : [{ check, count, verdict: 'shown', cylinder }];
}

/** For every measurement made on two cylinders or more: whether one cylinder differs from the rest, as far as so few can show it. */
export const oddCylinders = (checks: readonly CylinderCheck[], engine: Engine): readonly OddAnswer[] =>
  ODD_CHECKS.flatMap((check) => answerFor(check, checks, engine));
