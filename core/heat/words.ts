import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { Assumed } from '../band.ts';
import type { Lacking } from './recorded-running.ts';

type ModelPart = NonNullable<Findings['heat']['model']>;
type ModelTip = ModelPart['tips'][number];

/** What a record lacks, as it is written in findings. */
export const lackingWords: Readonly<Record<Lacking, string>> = {
  bore: 'bore', stroke: 'stroke', 'compression ratio': 'compression ratio', 'heat value': 'heat value the engine maker asks for',
  'fitted heat value': 'heat value of the fitted plugs against the one asked for', 'one heat value': 'one heat value for the whole set',
  duty: 'a steady duty (idle, town, light load, steady cruise or full load)', speed: 'engine speed',
};

export const assumedWords = ({ of, value }: Assumed): string => `${of} ${Number(value.toFixed(2))}${of === 'advance' ? '°' : ''}`;

const STEP_WORDS = { '-1': 'one step colder', 0: 'no step', 1: 'one step hotter' } as const;
const percent = (share: number): string => (share < 0.01 ? 'under 1 %' : share > 0.99 ? 'over 99 %' : `${Math.round(100 * share)} %`);

const SAYS: Readonly<Record<ModelPart['says'], string>> = {
  colder: 'The fitted plug is likely too hot at full load.',
  hotter: 'The fitted plug is likely too cold for the recorded running, and one step hotter would bear full load.',
  fits: 'The fitted plug suits the recorded running and full load.',
  open: 'The model does not decide.',
  overridden: 'The model knows neither knock nor pre-ignition, oil nor damage; what the tips show of them overrides it.',
  'not computed': 'The model was not asked.',
};

function tipLine({ step, at, lowC, highC, tooCold, tooHot }: ModelTip): string {
  const plug = step === 0 ? 'the fitted plug' : STEP_WORDS[step];
  return `${at === 'full load' ? 'At full load' : 'As recorded'}, ${plug}: tip ${lowC} to ${highC} °C, too cold ${percent(tooCold)}, too hot ${percent(tooHot)}.`;
}

const STANDING: Readonly<Record<ModelPart['standing'], (step: ModelPart['tipsStep']) => string>> = {
  agrees: (step) => `The tips ask for ${STEP_WORDS[step]}, and the model agrees.`,
  silent: (step) => `The tips ask for ${STEP_WORDS[step]}; the model neither supports nor contradicts it.`,
  disagrees: (step) => (step === 0
    ? 'The tips ask for no step. The model alone moves nothing: stay, and read again after running at full load.'
    : `The tips ask for ${STEP_WORDS[step]}, the model speaks against it. Where the two disagree: stay, and look for another cause.`),
};

/** The model's part of the advice in plain words: how it stands to the tips, what it says, and what it computed. */
export function modelWords({ step, says, standing, tips }: { readonly step: ModelPart['tipsStep'] } & Pick<ModelPart, 'says' | 'standing' | 'tips'>): string[] {
  const neighbour = step === 0 ? 1 : step;
  const full = tips.find((tip) => tip.step === 0 && tip.at === 'full load');
  const shown = tips.filter((tip) => (tip.at === 'full load' ? tip.step === 0 || tip.step === neighbour : tip.step === 0 && tip.middleC !== full?.middleC));
  return [...(says === 'overridden' ? [] : [STANDING[standing](step)]), SAYS[says], ...shown.map(tipLine)];
}
