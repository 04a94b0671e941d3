import { z } from 'zod';
import { amount, record, text } from './strict.ts';

const line = text(2000);
const celsius = amount('°C', -273, 3000);
const chance = amount('a chance', 0, 1);
const step = z.union([z.literal(-1), z.literal(0), z.literal(1)]);

/**
 * What the thermal model says beside the tips. `tipsStep`: what the tips ask for with every guard. `disagrees`: the model speaks against it, and the
 * advice is to stay. `overridden`: signs of knock, pre-ignition, oil or damage, of which the model knows nothing. `missing`: what the record lacks for
 * the model to be asked; `assumed`: what nobody recorded. `tips`: 90 % bands of the insulator tip for a step from the fitted plug, and the chances of
 * standing below self-cleaning and above the limit of heat.
 */
export const heatModel = record({
  tipsStep: step,
  says: z.enum(['colder', 'fits', 'hotter', 'open', 'overridden', 'not computed']),
  standing: z.enum(['agrees', 'disagrees', 'silent']),
  words: z.array(line),
  missing: z.array(line),
  assumed: z.array(line),
  tips: z.array(record({ step, at: z.enum(['as recorded', 'full load']), lowC: celsius, middleC: celsius, highC: celsius, tooCold: chance, tooHot: chance })),
});
