import { useMemo, useState } from 'react';
import type { Point } from '../../../../core/photo/pixels.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { useText } from '../../../text/index.ts';
import { formatNumber } from '../../../text/numbers.ts';
import { Button, GlyphButton } from '../../../ui/button.tsx';
import { AddGlyph, LessGlyph } from '../../../ui/glyphs.tsx';
import { WhiteFilters, whiteFilter } from '../light/common-white.tsx';
import { WhiteArea } from '../light/white-tool.tsx';
import { MarkShape } from '../marks/mark-shapes.tsx';
import { PartsHandles, PartsShown } from '../parts/parts-layer.tsx';
import { partsOf, SURE } from '../parts/parts.ts';
import { Layer } from '../viewer/layer.tsx';
import { Loupe } from '../viewer/loupe.tsx';
import { seenThrough, AS_IT_IS } from '../viewer/placement.ts';
import { Surface } from '../viewer/surface.tsx';
import { useView, type Viewing } from '../viewer/use-view.ts';
import { toPicture, ZOOM_STEP, type View } from '../viewer/view.ts';
import styles from './photo.module.css';
import type { Hand } from './hand.ts';

function Overlay({ photo, view, hand, shown }: { photo: PhotoRecord; view: View; hand: Hand; shown: boolean }) {
  const parts = useMemo(() => partsOf(photo), [photo]);
  const doubtful = photo.geometry === null && (photo.measure?.geometry.confidence ?? 0) < SURE.trust;
  const { white } = photo;
  return (
    <>
      {hand.inHand.does === 'parts' ? <PartsHandles key={photo.id} parts={parts} view={view} onDone={(geometry) => hand.point({ geometry })} />
        : shown && <PartsShown parts={parts} view={view} doubtful={doubtful} />}
      <svg className={styles.overlay} aria-hidden="true">
        {shown && white !== null && white.kind !== 'photo' && <WhiteArea box={white} view={view} />}
        {photo.annotations.map((mark, i) => <MarkShape key={i} mark={mark} view={view} />)}
      </svg>
    </>
  );
}

type Switch = { readonly words: string; readonly on: boolean; readonly onChange: () => void; readonly disabled?: boolean };

function Tools({ viewing, switches, whole }: { viewing: Viewing; switches: readonly Switch[]; whole: boolean }) {
  const { viewer: words } = useText().photos;
  const { view, zoom, fit, toFull } = viewing;
  return (
    <div className={styles.tools} role="group" aria-label={words.tools}>
      <GlyphButton name={words.nearer} onClick={() => zoom(ZOOM_STEP)}><AddGlyph /></GlyphButton>
      <GlyphButton name={words.farther} onClick={() => zoom(1 / ZOOM_STEP)}><LessGlyph /></GlyphButton>
      <Button look="quiet" onClick={fit}>{words.fit}</Button>
      <Button look="quiet" onClick={toFull}>{words.full}</Button>
      {switches.map(({ words: name, on, onChange, disabled = false }) => (
        <Button key={name} look="quiet" aria-pressed={on} disabled={disabled} onClick={onChange}>{name}</Button>
      ))}
      <span className={styles.scale}>{words.scale(formatNumber(100 * view.scale, 0), whole)}</span>
    </div>
  );
}

/** One photo at any size on a neutral ground, with what was found in it and what was marked. */
export function Picture({ photo, hand }: { photo: PhotoRecord; hand: Hand }) {
  const { viewer: words } = useText().photos;
  const viewing = useView(photo);
  const [loupe, setLoupe] = useState(false);
  const [shown, setShown] = useState(true);
  const [whole, setWhole] = useState(false);
  const [corrected, setCorrected] = useState(false);
  const filter = whiteFilter(photo);
  const shownFilter = corrected ? filter : undefined;
  const [at, setAt] = useState<Point | null>(null);
  const { view, room } = viewing;
  const cross = loupe || hand.tool !== undefined ? at ?? toPicture(view, { x: room.width / 2, y: room.height / 2 }) : null;
  return (
    <div className={styles.viewer}
      onKeyDown={(event) => { if (event.key.toLowerCase() === 'l' && !event.ctrlKey && !event.metaKey && !event.altKey) setLoupe(!loupe); else if (event.key === 'Escape') hand.putDown(); }}>
      <WhiteFilters photos={[photo]} />
      <Surface viewing={viewing} label={words.pictureOf(photo.name)} description={words.byKeys} tool={hand.tool} cross={cross} onCross={setAt}>
        <Layer photo={photo} at={seenThrough(view, AS_IT_IS)} filter={shownFilter} onLoad={setWhole} />
        <Overlay photo={photo} view={view} hand={hand} shown={shown && !loupe} />
        {loupe && cross !== null && <Loupe photo={photo} filter={shownFilter} at={cross} view={view} room={room} />}
      </Surface>
      <Tools viewing={viewing} whole={whole} switches={[
        { words: words.loupe, on: loupe, onChange: () => setLoupe(!loupe) }, { words: words.outlines, on: shown, onChange: () => setShown(!shown) },
        { words: words.corrected, on: corrected && filter !== undefined, onChange: () => setCorrected(!corrected), disabled: filter === undefined },
      ]} />
    </div>
  );
}
