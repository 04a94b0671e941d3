import { z } from 'zod';
import { findings } from './findings.v1.ts';
import { record } from './strict.ts';

const { plugs, stop } = findings.shape;

/** What is decided of a sheet, with nothing explained: a part of its findings, word for word. */
export const firstLook = record({
  plugs: z.array(plugs.element.omit({ causes: true, nextChecks: true, doubts: true })),
  stop,
});
export type FirstLook = z.output<typeof firstLook>;
export type PlugLook = FirstLook['plugs'][number];
