import type { FirstLook, PlugLook } from '../../shared/formats/first-look.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Risk } from '../../shared/vocabulary/verdicts.ts';
import type { Knowledge } from '../knowledge/types.ts';
import { graver } from '../shop-lines/guards.ts';
import type { Conclusion, Judged } from './conclude.ts';
import { concludeWith, type Shop } from './conclude-with.ts';
import type { PlugEvidence } from './evidence.ts';
import { roundedPlug } from './rounding.ts';
import { stopLines, type Stop } from './stop-rules.ts';
import type { PlugVerdict } from './verdict.ts';

/** `guard`: what follows without the lines of the workshop, where there are any. */
type Grounds = { readonly stops: readonly Stop[]; readonly guard?: Conclusion | undefined };

function riskOf({ beliefs }: PlugVerdict, stops: readonly Stop[], plug: PlugEvidence): Risk {
  if (stops.some((stop) => stop.plugs.includes(plug))) return 'stop';
  const of = (v: Parameters<typeof beliefs.get>[0]): number => beliefs.get(v) ?? 0;
  const hot = of('pre-ignition damage') + of('detonation damage') + of('too hot');
  if (hot > 0.5) return 'high';
  return hot > 0.2 || of('ash deposits') + of('insulator damage') + of('wrong reach') + of('glazing') > 0.4 ? 'raised' : 'low';
}

/** The graver of what follows with the workshop's lines and without them. */
function guardedRisk({ plug, judgement }: Judged, { stops, guard }: Grounds): Risk {
  const risk = riskOf(judgement, stops, plug);
  const own = guard?.judged.find((judged) => judged.plug.key === plug.key);
  return own === undefined ? risk : graver(risk, riskOf(own.judgement, [], own.plug));
}

/** What is decided of one plug; beliefs in full, not rounded. */
export function plugLook(judged: Judged, grounds: Grounds): PlugLook {
  const { plug: { place }, judgement: { verdict, also, belief, thermal } } = judged;
  return { cylinder: place.cylinder, position: place.position, verdict, also: [...also], belief, thermal, preIgnitionRisk: guardedRisk(judged, grounds) };
}

/**
 * What is decided of a sheet, for those who cannot wait for the reasons: the verdict of every plug that was read, and the stops, the same as in its
 * findings. Pure.
 * @param sheet a parsed reading sheet
 * @param given the knowledge; `shop`: absent when it is the program's own
 */
export function firstLook(sheet: ReadingSheet, { knowledge, shop }: { readonly knowledge: Knowledge; readonly shop?: Shop }): FirstLook {
  const guarded = concludeWith(sheet, knowledge, shop);
  const read = guarded.judged.filter(({ plug }) => plug.reading !== undefined);
  return { plugs: read.map((judged) => roundedPlug(plugLook(judged, guarded))), stop: stopLines(guarded.stops) };
}
