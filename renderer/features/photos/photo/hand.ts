import { useState } from 'react';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import type { PointedOut } from '../../../state/photos-slice.ts';
import { whiteOf, whiteTool, type Neutral } from '../light/white-tool.tsx';
import { markTool, type MarkKind } from '../marks/drawing.tsx';
import { useMarks } from '../marks/mark-list.tsx';
import type { Tool } from '../viewer/surface.tsx';

/** What the pointer does in the picture. */
export type InHand = { readonly does: 'look' } | { readonly does: 'parts' } | { readonly does: 'white'; readonly neutral: Neutral } | { readonly does: 'mark'; readonly kind: MarkKind };

const LOOK: InHand = { does: 'look' };

export type Hand = {
  readonly inHand: InHand;
  readonly take: (next: InHand) => void;
  readonly putDown: () => void;
  readonly tool: Tool | undefined;
  /** Measures anew with what was pointed out. */
  readonly point: (change: PointedOut) => void;
};

/** The tool at hand for one photo, and what it does there. */
export function useInHand(photo: PhotoRecord): Hand {
  const { photos: words, shell } = useText();
  const { measurePhoto, tell } = useStore.getState();
  const [inHand, setInHand] = useState<InHand>(LOOK);
  const keepMarks = useMarks(photo);
  const longest = Math.max(photo.width, photo.height);
  const putDown = (): void => setInHand(LOOK);
  const point = (change: PointedOut): void => void measurePhoto(photo.id, change).then((error) => {
    if (error !== null) tell({ text: words.problemToTell(photo.name, shell.error(error)), tone: 'problem' });
  });
  const tools = (): Tool | undefined => {
    switch (inHand.does) {
      case 'white': return whiteTool(photo, (box) => { point({ white: whiteOf(inHand.neutral, box) }); putDown(); });
      case 'mark': return markTool(inHand.kind, longest, (mark) => { keepMarks([...photo.annotations, mark]); putDown(); });
      default: return undefined;
    }
  };
  return { inHand, take: setInHand, putDown, tool: tools(), point };
}
