import { plugKey, plugPlaces } from '../../../../core/domain/plugs.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { useText } from '../../../text/index.ts';
import { formatDate } from '../../../text/numbers.ts';
import { Crop } from '../crop.tsx';
import { photosAt } from '../lay-out/steps.ts';
import styles from './compare.module.css';
import type { PhotographedReading } from './use-engine-photos.ts';

type Props = {
  readonly engine: Engine;
  readonly readings: readonly PhotographedReading[];
  /** The photos that are compared. */
  readonly chosen: readonly (PhotoRecord | undefined)[];
  readonly onChoose: (photo: PhotoRecord) => void;
};

/** All photos of an engine: a reading to a row, a plug to a column. Choosing one compares it with the one before at the same plug. */
export function EngineStrip({ engine, readings, chosen, onChoose }: Props) {
  const { photos: { compare: words }, tray, shell } = useText();
  const places = plugPlaces(engine);
  return (
    <div className={styles.strip} tabIndex={0} role="region" aria-label={words.strip}>
      <table>
        <thead>
          <tr><td />{places.map((place) => <th key={plugKey(place.cylinder, place.position)} scope="col">{tray.placeName(place)}</th>)}</tr>
        </thead>
        <tbody>
          {readings.map(({ reading, photos }) => (
            <tr key={reading.id}>
              <th scope="row"><span className={styles.day}>{reading.date === null ? shell.reading.noDate : formatDate(reading.date)}</span><span className={styles.about}>{reading.title}</span></th>
              {places.map(({ cylinder, position }) => {
                const key = plugKey(cylinder, position);
                return (
                  <td key={key}>
                    {photosAt(photos, key).map((photo) => (
                      <button key={photo.id} type="button" className={styles.thumb} aria-pressed={chosen.some((one) => one?.id === photo.id)} title={photo.name}
                        aria-label={words.choose(tray.placeName({ cylinder, position }), photo.name)} onClick={() => onChoose(photo)}>
                        <Crop photo={photo} size="small" />
                      </button>
                    ))}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
