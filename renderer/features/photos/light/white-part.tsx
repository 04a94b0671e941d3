import type { AppError } from '../../../../shared/channels.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { Button } from '../../../ui/button.tsx';
import { SelectField } from '../../../ui/select-field.tsx';
import styles from './light.module.css';
import { NEUTRALS, type Neutral } from './white-tool.tsx';

type Props = {
  readonly photo: PhotoRecord;
  /** The other photos of the reading. */
  readonly others: readonly PhotoRecord[];
  readonly neutral: Neutral | undefined;
  readonly onNeutral: (neutral: Neutral | undefined) => void;
};

const hasOwnWhite = ({ white }: PhotoRecord): boolean => white !== null && white.kind !== 'photo';

/** What the colours stand on: pointed out here, taken from a photo under the same lamp, or estimated. */
export function WhitePart({ photo, others, neutral, onNeutral }: Props) {
  const { photos: { light, problemToTell }, shell } = useText();
  const { measurePhoto, tell } = useStore.getState();
  const measuring = useStore((state) => state.measuring.size > 0);
  const reference = photo.measure?.whiteReference;
  const told = (error: AppError | null, name: string): void => { if (error !== null) tell({ text: problemToTell(name, shell.error(error)), tone: 'problem' }); };
  const give = (white: PhotoRecord['white']): void => void measurePhoto(photo.id, { white }).then((error) => told(error, photo.name));
  const givers = others.filter(hasOwnWhite);
  const giver = photo.white?.kind === 'photo' ? photo.white.id : undefined;
  const takers = others.filter(({ white, colour }) => colour === 'yes' && (white === null || (white.kind === 'photo' && white.id !== photo.id)));
  const giveToAll = async (): Promise<void> => {
    for (const other of takers) told(await measurePhoto(other.id, { white: { kind: 'photo', id: photo.id } }), other.name);
    tell({ text: light.gaveToAll(takers.length), tone: 'plain' });
  };
  return (
    <>
      <p>{light.reference[reference === undefined ? 'unmeasured' : reference.kind === 'none' ? 'none' : reference.taken]}</p>
      <div className={styles.tools}>
        {NEUTRALS.map((each) => (
          <Button key={each} aria-pressed={neutral === each} onClick={() => onNeutral(neutral === each ? undefined : each)}>{light.pointOut[each]}</Button>
        ))}
      </div>
      {neutral !== undefined && <p className={styles.soft}>{light.how}</p>}
      {givers.length > 0 && !hasOwnWhite(photo) && (
        <SelectField label={light.sameLamp} options={givers.map(({ id }) => id)} value={giver} none={light.none}
          nameOf={(id) => others.find((other) => other.id === id)?.name ?? id}
          onChange={(id) => give(id === undefined ? null : { kind: 'photo', id })} />
      )}
      <div className={styles.tools}>
        {hasOwnWhite(photo) && takers.length > 0 && <Button disabled={measuring} onClick={() => void giveToAll()}>{light.giveToAll(takers.length)}</Button>}
        {photo.white !== null && <Button look="quiet" onClick={() => give(null)}>{light.forget}</Button>}
      </div>
    </>
  );
}
