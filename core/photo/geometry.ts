import type { Ring } from './ring-fit.ts';
import type { Strap } from './strap.ts';

/** Where the parts of a plug lie, in pixels of the picture. `confidence` (0 to 1) speaks for all of it. */
export type Geometry = {
  readonly bore: Ring;
  /** Outer edge of the shell's end face, and the outline of the shell with its thread. */
  readonly face: Ring;
  readonly shell: Ring;
  readonly nose: Ring;
  readonly noseFitted: boolean;
  readonly strap: Strap;
  /** End of the centre electrode; only a guess where the strap hides it or its edge cannot be seen. */
  readonly electrode: Ring;
  readonly confidence: number;
  /** Another plug, or something like one, is in the picture. */
  readonly several: boolean;
  /** How far the edge of the bore is spread out, as a share of its radius: a blurred picture, or a worn edge. */
  readonly softness: number;
};
