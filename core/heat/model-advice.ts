import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Belief } from '../thermal/belief.ts';
import { SELF_CLEANING, TOO_HOT } from '../thermal/limits.ts';
import { gasAtPlug, tipBand } from '../thermal/tip.ts';
import { learnedFrom, specifiedAnchor } from './anchors.ts';
import { BEARABLE, chanceAbove } from './ladder.ts';
import { recordedRunning, type RecordedRunning } from './recorded-running.ts';
import { dutyOf, heatEngine, usualSetting, type Setting } from './setting.ts';
import { assumedWords, lackingWords, modelWords } from './words.ts';

type Step = -1 | 0 | 1;
export type ModelPart = NonNullable<Findings['heat']['model']>;
type ModelTip = ModelPart['tips'][number];
type At = ModelTip['at'];

/** Below this chance of being too hot the model speaks against a colder plug. Grade: judgement. */
const SURELY_COOL = 0.1;
const LIKELY = 0.5;

const two = (share: number): number => Math.round(100 * share) / 100;

/** Full load at the fastest usual running; the recorded one where that was full load itself. */
function hardest({ engine }: ReadingSheet, { setting, duty }: RecordedRunning): Setting {
  const usual = usualSetting(engine);
  return duty === 'full load' ? setting : { ...setting, load: 1, rpm: Math.max(setting.rpm, usual.rpm), lambda: usual.lambda, advance: usual.advance };
}

type Asked = { readonly sheet: ReadingSheet; readonly running: RecordedRunning; readonly belief: Belief };

function tipsAt({ sheet: { engine }, running, belief }: Asked, at: At, setting: Setting): readonly ModelTip[] {
  const gas = gasAtPlug(heatEngine(engine).engine, dutyOf(engine, setting), running.assumed);
  if (!gas.ok) return [];
  return ([-1, 0, 1] as const).map((step) => {
    const band = tipBand(gas.value, { heatStep: setting.heatStep + step, seat: 1 }, belief);
    return {
      step, at, lowC: Math.round(band.low), middleC: Math.round(band.middle), highC: Math.round(band.high),
      tooCold: two(1 - chanceAbove(band, SELF_CLEANING)), tooHot: two(chanceAbove(band, TOO_HOT)),
    };
  });
}

type Chances = { readonly coldNow: number; readonly hotNow: number; readonly hotHotter: number };

/** At idle every plug gathers soot: that says nothing about its heat value. */
function chancesOf(tips: readonly ModelTip[], { duty }: RecordedRunning): Chances {
  const chance = (at: At, step: Step, what: 'tooCold' | 'tooHot'): number => tips.find((tip) => tip.at === at && tip.step === step)?.[what] ?? 0;
  return { coldNow: duty === 'idle' ? 0 : chance('as recorded', 0, 'tooCold'), hotNow: chance('full load', 0, 'tooHot'), hotHotter: chance('full load', 1, 'tooHot') };
}

function saysOf({ coldNow, hotNow, hotHotter }: Chances, { use }: Engine): ModelPart['says'] {
  if (hotNow > LIKELY) return 'colder';
  if (coldNow > LIKELY) return hotHotter <= BEARABLE && use !== 'aircraft' ? 'hotter' : 'open';
  return hotNow <= BEARABLE && coldNow <= BEARABLE ? 'fits' : 'open';
}

/** Whether the model speaks against the step that the tips ask for. */
function objects(step: Step, { coldNow, hotNow, hotHotter }: Chances): boolean {
  if (step === 1) return hotHotter > BEARABLE || coldNow < BEARABLE;
  return step === -1 && hotNow < SURELY_COOL;
}

const STEP_OF = { colder: -1, fits: 0, hotter: 1 } as const;

function standingOf(step: Step, says: ModelPart['says'], chances: Chances): ModelPart['standing'] {
  if (objects(step, chances)) return 'disagrees';
  if (says === 'open' || says === 'overridden' || says === 'not computed') return 'silent';
  return STEP_OF[says] === step ? 'agrees' : step === 0 ? 'disagrees' : 'silent';
}

/**
 * What the thermal model says of the fitted plug and its neighbours for the recorded running and for full load, beside the step that the tips ask for.
 * The engine maker's heat value is taken to be about right at full load. Where the record lacks something it says what.
 * @param step what the tips, with every guard, ask for
 * @param overridden signs of something the model knows nothing of: then it says nothing of the plug
 */
export function modelAdvice(sheet: ReadingSheet, step: Step, overridden: boolean): ModelPart {
  const running = recordedRunning(sheet);
  const silent: ModelPart = { tipsStep: step, says: 'not computed', standing: 'silent', words: [], missing: [], assumed: [], tips: [] };
  if (!running.ok) return { ...silent, missing: running.error.map((name) => lackingWords[name]) };
  const asked = { sheet, running: running.value, belief: learnedFrom(specifiedAnchor(sheet.engine)).belief };
  const tips = [...tipsAt(asked, 'as recorded', running.value.setting), ...tipsAt(asked, 'full load', hardest(sheet, running.value))];
  if (tips.length < 6) return { ...silent, words: ['The recorded running lies outside what the model can compute.'] };
  const chances = chancesOf(tips, running.value);
  const says = overridden ? 'overridden' : saysOf(chances, sheet.engine);
  const standing = standingOf(step, says, chances);
  const words = modelWords({ step, says, standing, tips });
  return { ...silent, says, standing, tips, words, assumed: running.value.assumed.map(assumedWords) };
}
