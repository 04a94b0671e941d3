import { useState, type ReactNode } from 'react';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { useText } from '../../../text/index.ts';
import { Slider } from '../../../ui/slider.tsx';
import { partsOf } from '../parts/parts.ts';
import { Layer } from '../viewer/layer.tsx';
import { AS_IT_IS, seenThrough, type Placement } from '../viewer/placement.ts';
import { Surface } from '../viewer/surface.tsx';
import { useView, type Viewing } from '../viewer/use-view.ts';
import styles from './compare.module.css';
import { ringOf } from './registration.ts';

/** Around the plug, in its radii. */
const AIR = 1.15;

export const MODES = ['side by side', 'onion skin', 'wipe'] as const;
export type Mode = (typeof MODES)[number];

type Pair = { readonly before: PhotoRecord; readonly after: PhotoRecord };
type Props = Pair & {
  readonly mode: Mode;
  /** Carries the later picture onto the earlier. */
  readonly onto: Placement;
  readonly filterOf: (photo: PhotoRecord) => string | undefined;
  readonly names: readonly [string, string];
};

const noCross = (): void => undefined;
const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** The same view of two pictures, each in a pane of its own. Both move together. */
function SideBySide({ before, after, onto, filterOf, names, viewing }: Omit<Props, 'mode'> & { viewing: Viewing }) {
  const { viewer, compare: words } = useText().photos;
  const { view } = viewing;
  return (
    <div className={styles.two}>
      <figure className={styles.pane}>
        <Surface viewing={viewing} label={words.paneOf(names[0])} description={viewer.byKeys} cross={null} onCross={noCross}>
          <Layer photo={before} at={seenThrough(view, AS_IT_IS)} filter={filterOf(before)} />
        </Surface>
        <figcaption>{names[0]}</figcaption>
      </figure>
      <figure className={styles.pane}>
        <Surface viewing={{ ...viewing, surface: { current: null } }} label={words.paneOf(names[1])} description={viewer.byKeys} cross={null} onCross={noCross}>
          <Layer photo={after} at={seenThrough(view, onto)} filter={filterOf(after)} />
        </Surface>
        <figcaption>{names[1]}</figcaption>
      </figure>
    </div>
  );
}

/** One picture over the other: shining through, or cut off at an edge that is moved. */
function Stacked({ before, after, mode, onto, filterOf, names, viewing }: Props & { viewing: Viewing }) {
  const { viewer, compare: words } = useText().photos;
  const [share, setShare] = useState(0.5);
  const { view, room } = viewing;
  const edge = share * room.width;
  const over: ReactNode = <Layer photo={after} at={seenThrough(view, onto)} filter={filterOf(after)} opacity={mode === 'onion skin' ? share : 1} />;
  return (
    <>
      <figure className={styles.pane}>
        <Surface viewing={viewing} label={words.paneOf(`${names[0]}, ${names[1]}`)} description={viewer.byKeys} cross={null} onCross={noCross}>
          <Layer photo={before} at={seenThrough(view, AS_IT_IS)} filter={filterOf(before)} />
          {mode === 'wipe' ? <div className={styles.cut} style={{ clipPath: `inset(0 0 0 ${edge}px)` }}><div className={styles.ground} />{over}</div> : over}
          {mode === 'wipe' && <div className={styles.edge} style={{ left: edge }} />}
        </Surface>
        <figcaption className={styles.names}><span>{names[0]}</span><span>{names[1]}</span></figcaption>
      </figure>
      <Slider label={mode === 'wipe' ? words.wipe : words.through} remark="" shown={percent(share)} value={share} least={0} most={1} step={0.01} onChange={setShare} />
    </>
  );
}

/** Two pictures of one plug, laid on each other by what was found in them. */
export function Panes(props: Props) {
  const ring = ringOf(partsOf(props.before));
  const viewing = useView(props.before, ring && { at: ring, reach: AIR * ring.r });
  return props.mode === 'side by side' ? <SideBySide {...props} viewing={viewing} /> : <Stacked {...props} viewing={viewing} />;
}
