import { useEffect, useMemo } from 'react';
import type { EngineRecord } from '../../../shared/channels.ts';
import type { HeatRecord } from '../../../shared/channels-heat.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import { anchorsOf, learnedFrom, type Learned } from '../../../core/heat/anchors.ts';
import { recordedRunning } from '../../../core/heat/recorded-running.ts';
import { usualSetting, type Setting } from '../../../core/heat/setting.ts';
import { useStore } from '../../state/store.ts';
import type { HeatTrial } from '../../state/heat-slice.ts';
import { useText } from '../../text/index.ts';

/** What every part of the heat page works with. */
export type HeatBench = {
  readonly id: string;
  readonly engine: Engine;
  readonly record: HeatRecord;
  readonly learned: Learned;
  readonly setting: Setting;
  /** The running of the last kept reading where it says enough, else a usual one. */
  readonly usual: Setting;
  readonly trial: HeatTrial;
  readonly onTry: (change: HeatTrial) => void;
};

const NOTHING: HeatRecord = { kept: [], entries: [] };
const NO_TRIAL: HeatTrial = {};

/** Where the sliders stand at first. */
function startingAt(engine: Engine, { kept }: HeatRecord): Setting {
  const runnings = kept.flatMap(({ sheet }) => { const running = recordedRunning(sheet); return running.ok ? [running.value.setting] : []; });
  const last = runnings.at(-1);
  return last === undefined ? usualSetting(engine) : { ...last, gap: engine.fitment?.gapMm ?? last.gap };
}

/** Reads what the engine told and brings it together with what is being tried. */
export function useHeatBench({ id, engine }: EngineRecord): HeatBench {
  const { shell } = useText();
  const loadHeat = useStore((state) => state.loadHeat);
  const tell = useStore((state) => state.tell);
  const tryHeat = useStore((state) => state.tryHeat);
  const record = useStore((state) => (state.heat?.engineId === id ? state.heat.record : NOTHING));
  const trial = useStore((state) => state.heatTrials[id] ?? NO_TRIAL);
  useEffect(() => {
    void loadHeat(id).then((error) => { if (error !== null) tell({ text: shell.error(error), tone: 'problem' }); });
  }, [id, loadHeat, tell, shell]);
  const learned = useMemo(() => learnedFrom(anchorsOf(engine, record)), [engine, record]);
  const usual = useMemo(() => startingAt(engine, record), [engine, record]);
  const onTry = useMemo(() => (change: HeatTrial) => tryHeat(id, change), [id, tryHeat]);
  return { id, engine, record, learned, usual, setting: trial.setting ?? usual, trial, onTry };
}
