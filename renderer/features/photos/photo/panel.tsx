import { useMemo, type ReactNode } from 'react';
import { plugKey } from '../../../../core/domain/plugs.ts';
import { PHOTO_VIEWS, type PhotoRecord } from '../../../../shared/channels-photo.ts';
import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { usePlaces, usePlug } from '../../../state/hooks.ts';
import { placeOf } from '../../../state/places.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { formatBelief } from '../../../text/numbers.ts';
import { Button } from '../../../ui/button.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { DrawnTip } from '../../../ui/drawn-tip/index.ts';
import { Notice } from '../../../ui/notice.tsx';
import { SelectField } from '../../../ui/select-field.tsx';
import { keyOfPhoto, laidTo } from '../lay-out/steps.ts';
import { WhitePart } from '../light/white-part.tsx';
import { MarkList } from '../marks/mark-list.tsx';
import { Colours, OtherMeasures } from '../measures/colours.tsx';
import { labOf } from '../measures/colour-words.ts';
import measureStyles from '../measures/measures.module.css';
import { Suggestions } from '../measures/suggestions.tsx';
import { carriedOver, modelFor, partsOf, SURE, usualParts } from '../parts/parts.ts';
import type { Hand } from './hand.ts';
import styles from './photo.module.css';

const NOTHING_NOTED: Tip = {};

type Props = { readonly photo: PhotoRecord; readonly photos: readonly PhotoRecord[]; readonly hand: Hand };

const Part = ({ title, children }: { title: string; children: ReactNode }) => <section className={styles.part}><h2>{title}</h2>{children}</section>;

/** Whose plug it is, and from which side. */
function Place({ photo, photos }: Props) {
  const { photos: { layOut: words }, shell, tray } = useText();
  const places = usePlaces();
  const { placePhotos, tell } = useStore.getState();
  const lay = (layings: Parameters<typeof placePhotos>[0]): void => void placePhotos(layings).then((error) => { if (error !== null) tell({ text: shell.error(error), tone: 'problem' }); });
  const nameOf = (key: string): string => { const place = placeOf(key); return place === undefined ? key : tray.placeName(place); };
  return (
    <div className={styles.place}>
      <SelectField label={words.plug} options={places.map(({ cylinder, position }) => plugKey(cylinder, position))} value={keyOfPhoto(photo) ?? undefined}
        none={words.nowhere} nameOf={nameOf} onChange={(key) => lay([laidTo(photo, (key === undefined ? undefined : placeOf(key)) ?? null, photos)])} />
      <Choice label={words.seen} always options={PHOTO_VIEWS} value={photo.view} nameOf={(view) => words.views[view]}
        onChange={(view) => { if (view !== undefined) lay([{ ...laidTo(photo, photo.place, photos), order: photo.order, view }]); }} />
    </div>
  );
}

/** What was found, how sure that is, and how to put it right. */
function Found({ photo, photos, hand }: Props) {
  const { parts: words } = useText().photos;
  const confidence = photo.measure?.geometry.confidence ?? 0;
  const parts = partsOf(photo);
  const none = parts.shell === undefined && parts.nose === undefined;
  const model = modelFor(photo, photos);
  const working = hand.inHand.does === 'parts';
  const found = none || confidence < SURE.look ? words.notFound : confidence < SURE.trust ? words.unsure : words.found;
  const state = photo.geometry === null ? found : words.putRight;
  return (
    <>
      <p>{state} {photo.geometry === null && !none && <span className={styles.soft}>{words.confidence(formatBelief(confidence))}</span>}</p>
      <div className={styles.row}>
        <Button aria-pressed={working} onClick={() => { if (working) return hand.putDown(); if (none) hand.point({ geometry: usualParts(photo) }); hand.take({ does: 'parts' }); }}>
          {none ? words.pointOut : words.correct}
        </Button>
        {model !== undefined && (
          <Button onClick={() => { hand.point({ geometry: carriedOver(partsOf(model), model, photo) }); hand.take({ does: 'parts' }); }}>{words.asIn(model.name)}</Button>
        )}
        {photo.geometry !== null && <Button look="quiet" onClick={() => hand.point({ geometry: null })}>{words.forget}</Button>}
      </div>
      {working && <p className={styles.soft}>{words.how}</p>}
    </>
  );
}

/** The tip as it was noted, its nose in the measured colour: what the plug would look like under a neutral light. */
function Drawn({ photo, lab }: { photo: PhotoRecord; lab: readonly number[] }) {
  const { measures: words } = useText().photos;
  const { tip = NOTHING_NOTED } = usePlug(keyOfPhoto(photo) ?? '') ?? {};
  const measuredNose = useMemo(() => labOf(lab), [lab]);
  return (
    <figure className={measureStyles.drawn}>
      <DrawnTip tip={tip} view="end" size={96} seed={photo.id} title={words.drawn} measuredNose={measuredNose} />
      <figcaption>{words.drawn}</figcaption>
    </figure>
  );
}

function Measures({ photo }: { photo: PhotoRecord }) {
  const { measures: words } = useText().photos;
  const { measure, colour } = photo;
  if (measure === null) return <p>{words.notMeasured}</p>;
  return (
    <>
      {colour === 'yes' ? <Colours measure={measure} /> : <Notice>{words.refused[colour]}</Notice>}
      {colour === 'yes' && <p className={styles.soft}>{words.lightnessHelp}</p>}
      {colour === 'yes' && measure.regions.nose !== undefined && <Drawn photo={photo} lab={measure.regions.nose.lab} />}
    </>
  );
}

/** All that is known of a photo, beside it. */
export function Panel(props: Props) {
  const { photo, photos, hand } = props;
  const { photos: words } = useText();
  const { inHand, take, putDown } = hand;
  const doubts = photo.measure?.doubts ?? [];
  return (
    <div className={styles.panel} tabIndex={0} role="region" aria-label={words.panel}>
      {photo.problem !== null && <Notice tone="problem">{photo.problem}</Notice>}
      <Place {...props} />
      <Part title={words.measures.title}><Measures photo={photo} /></Part>
      <Part title={words.measures.suggests}><Suggestions photo={photo} /></Part>
      {photo.measure !== null && <Part title={words.measures.also}><OtherMeasures measure={photo.measure} /></Part>}
      {doubts.length > 0 && (
        <Part title={words.measures.doubts}><ul className={measureStyles.doubts}>{doubts.map((doubt) => <li key={doubt}>{doubt}</li>)}</ul></Part>
      )}
      <Part title={words.light.title}>
        <WhitePart photo={photo} others={photos.filter(({ id }) => id !== photo.id)} neutral={inHand.does === 'white' ? inHand.neutral : undefined}
          onNeutral={(neutral) => (neutral === undefined ? putDown() : take({ does: 'white', neutral }))} />
      </Part>
      <Part title={words.parts.title}><Found {...props} /></Part>
      <Part title={words.marks.title}>
        <MarkList photo={photo} kind={inHand.does === 'mark' ? inHand.kind : undefined} onKind={(kind) => (kind === undefined ? putDown() : take({ does: 'mark', kind }))} />
      </Part>
    </div>
  );
}
