import type { HeatEntry, HeatRecord } from '../../shared/channels-heat.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Celsius } from '../../shared/quantities.ts';
import type { Assumed } from '../band.ts';
import { anchor, type AnchorStep, type TipReading } from '../thermal/anchor.ts';
import type { Belief } from '../thermal/belief.ts';
import { gasAtPlug } from '../thermal/tip.ts';
import { lackingOfEngine, recordedRunning, type Lacking } from './recorded-running.ts';
import { dutyOf, heatEngine, usualSetting, type Setting } from './setting.ts';
import { tipSigns } from './tip-signs.ts';

/** Where a reading of the tip's temperature comes from. */
export type AnchorSource =
  | { readonly kind: 'specified' }
  | { readonly kind: 'reading'; readonly id: string; readonly date: string | undefined }
  | { readonly kind: 'entry'; readonly id: string };
export type Anchor = { readonly source: AnchorSource; readonly setting: Setting; readonly reading: TipReading };

/** A kept reading of which the model can learn nothing, and why. */
export type Unused = { readonly id: string; readonly date: string | undefined; readonly lacking: readonly Lacking[] };

type Showed = TipReading['showed'];

function reading(engine: Engine, setting: Setting, showed: Showed, assumed: readonly Assumed[] = []): TipReading | undefined {
  const gas = gasAtPlug(heatEngine(engine).engine, dutyOf(engine, setting), assumed);
  return gas.ok ? { gas: gas.value, seat: { heatStep: setting.heatStep, seat: 1 }, showed } : undefined;
}

function anchorAt(source: AnchorSource, engine: Engine, setting: Setting, showed: Showed, assumed?: readonly Assumed[]): readonly Anchor[] {
  const made = reading(engine, setting, showed, assumed);
  return made === undefined ? [] : [{ source, setting, reading: made }];
}

/** The heat value the engine maker asks for, taken to be about right at full load; none where the engine's record lacks something. */
export function specifiedAnchor(engine: Engine): readonly Anchor[] {
  return lackingOfEngine(engine).length > 0 ? [] : anchorAt({ kind: 'specified' }, engine, usualSetting(engine), { kind: 'specified' });
}

type Kept = HeatRecord['kept'][number];

const dateOf = ({ date }: ReadingSheet): string | undefined => date?.slice(0, 10);

function anchorsOfReading({ id, sheet }: Kept): readonly Anchor[] {
  const running = recordedRunning(sheet);
  if (!running.ok) return [];
  const { setting, assumed } = running.value;
  const source = { kind: 'reading', id, date: dateOf(sheet) } as const;
  const { egtC } = sheet.conditions ?? {};
  const showed: readonly Showed[] = [
    ...tipSigns(sheet).map((kind) => ({ kind })),
    ...(egtC === undefined ? [] : [{ kind: 'exhaust' as const, value: egtC as Celsius }]),
  ];
  return showed.flatMap((one) => anchorAt(source, sheet.engine, setting, one, assumed));
}

function showedIn(entry: HeatEntry): Showed | undefined {
  switch (entry.kind) {
    case 'sign': return { kind: entry.sign };
    case 'probe': return { kind: entry.probe, value: entry.celsius as Celsius };
    case 'note': return undefined;
  }
}

/** The same sign at the same kind of running says nothing new: the last one counts. A value counts every time. */
function once(anchors: readonly Anchor[]): readonly Anchor[] {
  const key = ({ setting, reading: { showed } }: Anchor): string | undefined =>
    ('value' in showed ? undefined : [showed.kind, setting.heatStep, setting.load.toFixed(1), Math.round(setting.rpm / 1000)].join(' '));
  return anchors.filter((one, i) => key(one) === undefined || !anchors.slice(i + 1).some((later) => key(later) === key(one)));
}

/** Everything an engine told about the temperature of its tips: what its maker asks for, its kept readings, what was entered by hand. */
export function anchorsOf(engine: Engine, { kept, entries }: HeatRecord): readonly Anchor[] {
  const byHand = entries.flatMap(({ id, entry }) => {
    const showed = showedIn(entry);
    return showed === undefined ? [] : anchorAt({ kind: 'entry', id }, engine, entry.setting, showed);
  });
  return [...specifiedAnchor(engine), ...once([...kept.flatMap(anchorsOfReading), ...byHand])];
}

/** Kept readings from which nothing could be learned because their record lacks something. */
export const unusedReadings = ({ kept }: HeatRecord): readonly Unused[] => kept.flatMap(({ id, sheet }) => {
  const running = recordedRunning(sheet);
  return running.ok ? [] : [{ id, date: dateOf(sheet), lacking: running.error }];
});

export type Learned = { readonly belief: Belief; readonly steps: readonly (AnchorStep & { readonly source: AnchorSource; readonly setting: Setting })[] };

/** The model corrected by the anchors in turn, with the arithmetic of each. */
export function learnedFrom(anchors: readonly Anchor[]): Learned {
  const { belief, steps } = anchor(anchors.map((one) => one.reading));
  return { belief, steps: steps.flatMap((step, i) => {
    const from = anchors[i];
    return from === undefined ? [] : [{ ...step, source: from.source, setting: from.setting }];
  }) };
}
