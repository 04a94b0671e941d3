import type { Celsius } from '../../shared/quantities.ts';
import type { Result } from '../../shared/result.ts';
import type { Engine } from '../thermal/cycle.ts';
import { driveSeconds, prepareDrive, type DriveProblem, type Phase } from '../thermal/drive.ts';
import type { PlugSeat } from '../thermal/plug-network.ts';
import { CLEAN, GOOD_INSULATION, shuntResistance, sootAfter, type NoseSoot } from './nose-soot.ts';

/** Short trips from cold, one after the other with a full cool-down between. */
export type ShortTrips = { readonly engine: Engine; readonly seat: PlugSeat; readonly trips: readonly (readonly Phase[])[]; readonly start: Celsius };

const MOST_ROUNDS = 30;

/**
 * Rounds of trips until the insulation is no longer good, each round all the trips once; `MOST_ROUNDS` when it stays good that long. The spread
 * between neighbouring heat values is small: do not rank them by it. Times to a factor of 3 at best. Errors as of `prepareDrive`.
 */
export function roundsUntilFouled({ engine, seat, trips, start }: ShortTrips): Result<number, readonly DriveProblem[]> {
  const prepared = trips.map((phases) => prepareDrive(engine, phases, start));
  const failed = prepared.find((drive) => !drive.ok);
  if (failed?.ok === false) return failed;
  const drives = prepared.flatMap((drive) => (drive.ok ? [driveSeconds(drive.value, engine, seat)] : []));
  let soot: NoseSoot = CLEAN;
  let round = 0;
  while (round < MOST_ROUNDS && shuntResistance(soot) >= GOOD_INSULATION) {
    soot = drives.reduce((before, seconds) => sootAfter(seconds, before), soot);
    round += 1;
  }
  return { ok: true, value: round };
}
