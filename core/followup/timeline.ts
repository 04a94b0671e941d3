import type { PlugAtReading, ReadingInTime } from '../../shared/channels-followup.ts';
import type { Findings, PlugFindings } from '../../shared/formats/findings.v1.ts';
import type { PlugReading, ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { plugKey, type PlugKey } from '../domain/plugs.ts';
import { plugChange, type PlugThen } from './plug-change.ts';

export type KeptReading = { readonly id: string; readonly sheet: ReadingSheet; readonly findings: Findings | null };

const keyOf = ({ cylinder, position }: { readonly cylinder: number; readonly position?: PlugAtReading['position'] | undefined }): PlugKey => plugKey(cylinder, position);

const readingOf = ({ sheet }: KeptReading, plug: PlugFindings): PlugReading | undefined => sheet.plugs.find((other) => keyOf(other) === keyOf(plug));

function thenOf(kept: KeptReading, plug: PlugFindings): PlugThen {
  const { tip, measured } = readingOf(kept, plug) ?? {};
  return { tip, measured, verdict: plug.verdict, also: plug.also, read: tip !== undefined || measured !== undefined };
}

/** What a reading said itself of its comparison with this very one before; nothing when it was compared with another or with none. */
function saidThen(now: KeptReading, before: KeptReading): ReadonlyMap<PlugKey, { change: PlugAtReading['change']; why: string }> {
  const followUp = now.findings?.followUp;
  const same = followUp !== undefined && followUp.before.date === before.sheet.date && followUp.before.title === before.sheet.title;
  return new Map(same ? followUp.plugs.map((plug) => [keyOf(plug), plug]) : []);
}

function plugsOf(now: KeptReading, before: KeptReading | undefined): PlugAtReading[] {
  const said = before === undefined ? new Map<PlugKey, never>() : saidThen(now, before);
  return (now.findings?.plugs ?? []).map((plug): PlugAtReading => {
    const { tip, measured } = readingOf(now, plug) ?? {};
    const was = before?.findings?.plugs.find((other) => keyOf(other) === keyOf(plug));
    const compared = said.get(keyOf(plug)) ?? plugChange(before && was && thenOf(before, was), thenOf(now, plug), false);
    return {
      cylinder: plug.cylinder, position: plug.position, verdict: plug.verdict, also: plug.also, ...(tip && { tip }), ...(measured && { measured }),
      change: before === undefined ? null : compared.change, why: before === undefined ? '' : compared.why,
    };
  });
}

/** The readings of one engine in order of time, every plug against the reading before it. @param readings kept ones, the oldest first */
export const timelineOf = (readings: readonly KeptReading[]): ReadingInTime[] => readings.map((reading, i) => ({
  id: reading.id,
  title: reading.sheet.title ?? '',
  date: reading.sheet.date ?? null,
  plugs: plugsOf(reading, readings[i - 1]),
  cures: (reading.findings?.followUp?.cures ?? []).filter(({ outcome }) => outcome !== 'not done').map(({ name, cylinders, outcome }) => ({ name, cylinders, outcome })),
}));
