import { createElement, memo, useId, useMemo, type ReactNode } from 'react';
import type { Lab } from '../../../core/photo/lab.ts';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import type { FacetName, FacetValue, Overall } from '../../../shared/vocabulary/tip.ts';
import { useText } from '../../text/index.ts';
import { CLOSE_UP } from './crop.ts';
import { describeTip } from './describe.ts';
import { drawTip, WHOLE, type View, type Window } from './drawing.ts';
import type { Shape } from './shape.ts';

const element = ({ tag, attrs, children }: Shape, key: number): ReactNode => createElement(tag, { key, ...attrs }, children?.map(element));

type PictureProps = {
  readonly tip: Tip;
  readonly view: View;
  readonly size: number;
  readonly seed: string;
  readonly window: Window;
  /** undefined: a picture beside words that say the same. */
  readonly title: string | undefined;
  readonly measuredNose?: Lab | undefined;
};

const Picture = memo(({ tip, view, size, seed, window, title, measuredNose }: PictureProps) => {
  const id = useId().replace(/\W/g, '');
  const drawing = useMemo(() => drawTip(tip, view, size, seed, id, window, measuredNose), [tip, view, size, seed, id, window, measuredNose]);
  const named = title === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': title };
  return (
    <svg viewBox={window.join(' ')} width={size} height={Math.round((size * window[3]) / window[2])} focusable="false" {...named}>
      {drawing.shapes.map(element)}
    </svg>
  );
});

type DrawnTipProps = {
  readonly tip: Tip;
  /** Along the axis, or the whole plug from the side, cut open below its axis. */
  readonly view: View;
  /** Width in CSS pixels. The end view is square, the side view 5 to 11. */
  readonly size: number;
  /** The same word gives the same grain; the key of the plug is a good one. */
  readonly seed: string;
  /** What a screen reader says; without it the drawing is described. An empty text hides a picture that stands beside its words. */
  readonly title?: string;
  /** Colour of the nose as a photo measured it, CIELAB under D65; drawn instead of the named one. */
  readonly measuredNose?: Lab | undefined;
};

/** A plug drawn from what was observed of it, on the neutral grey. What was not observed is bare line work. */
export function DrawnTip({ tip, view, size, seed, title, measuredNose }: DrawnTipProps) {
  const words = useText().tray.tip;
  const name = title ?? `${words.drawn[view]} ${describeTip(tip, words)}`;
  return <Picture tip={tip} view={view} size={size} seed={seed} window={WHOLE[view]} title={name === '' ? undefined : name} measuredNose={measuredNose} />;
}

export type Sample =
  | { readonly [F in FacetName]: { readonly facet: F; readonly value: FacetValue<F> } }[FacetName]
  | { readonly facet: 'overall'; readonly value: Overall };

/** One value close up, for a choice that says its word beside it. `on`: what else is drawn, such as the colour under a deposit. */
export function TipSample({ sample: { facet, value }, on, size }: { sample: Sample; on?: Tip; size: number }) {
  const tip = useMemo((): Tip => ({ ...on, [facet]: value }), [on, facet, value]);
  const { view, window } = CLOSE_UP[facet];
  return <Picture tip={tip} view={view} size={size} seed={facet} window={window} title={undefined} />;
}
