import type { Findings } from '../../../shared/formats/findings.v1.ts';

type Model = NonNullable<Findings['heat']['model']>;
type Step = Model['tipsStep'];

const steps: Readonly<Record<Step, string>> = { '-1': 'one step colder', 0: 'no step', 1: 'one step hotter' };

const standing: Readonly<Record<Model['standing'], (step: Step) => string>> = {
  agrees: () => 'Both agree.',
  silent: () => 'The model neither supports nor contradicts that.',
  disagrees: (step) => (step === 0 ? 'They differ. The model alone moves nothing: stay, and read again after running at full load.'
    : 'They disagree. Then the answer is: stay, and look for another cause.'),
};

const says: Readonly<Record<Model['says'], string>> = {
  colder: 'The fitted plug is likely too hot at full load.',
  hotter: 'The fitted plug is likely too cold for the recorded running, and one step hotter would bear full load.',
  fits: 'The fitted plug suits the recorded running and full load.',
  open: 'It does not decide.',
  overridden: 'It knows neither knock nor pre-ignition, oil nor damage; what the tips show of them overrides it.',
  'not computed': 'It was not asked.',
};

/** A chance as a whole percentage; never 0 or 100, which would claim certainty. @param share 0 to 1 */
export const chance = (share: number): string => (share < 0.01 ? 'under 1 %' : share > 0.99 ? 'over 99 %' : `${Math.round(100 * share)} %`);

/** Words of the thermal model's part in the heat advice. */
export const heatModel = {
  tips: 'What the tips say',
  tipsStep: (step: Step): string => `They ask for ${steps[step]}.`,
  model: 'What the model says',
  says, standing: (model: Model): string => standing[model.standing](model.tipsStep),
  missing: (names: readonly string[]): string => `Not asked; the record lacks: ${names.join('; ')}.`,
  assumed: (names: readonly string[]): string => `Assumed, so the bands are wider: ${names.join(', ')}.`,
  heads: { plug: 'Insulator tip, computed', cold: 'too cold', hot: 'too hot' },
  plugs: { '-1': 'one step colder', 0: 'as fitted', 1: 'one step hotter' } as Readonly<Record<Step, string>>,
  at: { 'as recorded': 'as recorded', 'full load': 'at full load' } as Readonly<Record<Model['tips'][number]['at'], string>>,
  row: (plug: string, at: string): string => `${plug}, ${at}`,
  range: (low: string, high: string): string => `${low} to ${high}`,
  chance,
  caution: 'Computed, not measured: read differences. The heat value asked for is taken to be about right at full load.',
};
