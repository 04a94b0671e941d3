import { useEffect, useRef, type KeyboardEvent, type PointerEvent, type RefObject } from 'react';
import type { Question } from '../../ui/drawn-tip/index.ts';
import { questionId } from './question.tsx';

const QUESTIONS = '[data-questions]';

type Follow = {
  /** Goes on the element around all controls; notes where a person acts before anything changes there. */
  readonly watch: { readonly onKeyDownCapture: (event: KeyboardEvent) => void; readonly onPointerDownCapture: (event: PointerEvent) => void };
  /** The focus shall go to the next question, though it is elsewhere now. */
  readonly follow: () => void;
};

/**
 * Keeps the question at hand in view. The focus goes with it when it was among the questions: the answered question may fold away with the
 * button that had the focus.
 */
export function useFollow(region: RefObject<HTMLElement | null>, question: Question, plug: string): Follow {
  const among = useRef(false);
  const shown = useRef(false);
  const questions = (): Element | null => region.current?.querySelector(QUESTIONS) ?? null;
  useEffect(() => {
    const row = document.getElementById(questionId(question));
    if (shown.current) row?.closest('[data-field]')?.scrollIntoView({ block: 'nearest' });
    if (among.current) row?.focus({ preventScroll: true });
    shown.current = true;
    among.current = false;
  }, [region, question, plug]);
  return {
    watch: {
      onKeyDownCapture: () => { among.current = questions()?.contains(document.activeElement) ?? false; },
      onPointerDownCapture: ({ target }) => { among.current = target instanceof Node && (questions()?.contains(target) ?? false); },
    },
    follow: () => { among.current = true; },
  };
}
