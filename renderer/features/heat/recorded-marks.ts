import type { Band } from '../../../core/band.ts';
import { recordedRunning } from '../../../core/heat/recorded-running.ts';
import { dutyOf, heatEngine, type Setting } from '../../../core/heat/setting.ts';
import type { Belief } from '../../../core/thermal/belief.ts';
import { gasAtPlug, tipBand } from '../../../core/thermal/tip.ts';
import type { HeatRecord } from '../../../shared/channels-heat.ts';
import type { Celsius } from '../../../shared/quantities.ts';
import type { Duty } from '../../../shared/vocabulary/conditions.ts';

/** The running of a kept reading, with the tip computed for it and for the plugs of that day. */
export type Mark = { readonly id: string; readonly date: string | undefined; readonly duty: Duty; readonly setting: Setting; readonly band: Band<Celsius> };

/** Marks of the kept readings that say enough about their running, the oldest first. */
export function recordedMarks({ kept }: HeatRecord, belief: Belief): readonly Mark[] {
  return kept.flatMap(({ id, sheet }) => {
    const running = recordedRunning(sheet);
    if (!running.ok) return [];
    const { setting, duty, assumed } = running.value;
    const gas = gasAtPlug(heatEngine(sheet.engine).engine, dutyOf(sheet.engine, setting), assumed);
    return gas.ok ? [{ id, duty, setting, date: sheet.date?.slice(0, 10), band: tipBand(gas.value, { heatStep: setting.heatStep, seat: 1 }, belief) }] : [];
  });
}
