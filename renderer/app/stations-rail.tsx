import { enteredCounts } from '../state/entered.ts';
import { usePhotoCount } from '../features/photos/index.ts';
import { useDecided, useDiagnosis, useSheet } from '../state/hooks.ts';
import { useText } from '../text/index.ts';
import { ToneShape } from '../ui/judgement.tsx';
import { hrefOf, STATIONS, type Station } from './route.ts';
import styles from './stations-rail.module.css';

function useNotes(readingId: string): Readonly<Record<Station, string>> {
  const text = useText();
  const { counts } = text.shell;
  const { run, plugs, plugsInAll, cylinders } = enteredCounts(useSheet());
  const diagnosis = useDiagnosis();
  const findings = run + plugs + cylinders === 0 ? 'none' : diagnosis.kind;
  const photos = usePhotoCount(readingId);
  return {
    run: counts.entered(run), plugs: counts.plugs(plugs, plugsInAll), photos: photos === undefined ? '' : text.photos.count(photos),
    cylinders: counts.entered(cylinders), findings: counts.findings[findings],
  };
}

/** The stations of a reading, each with what is entered there. */
export function StationsRail({ id, station }: { id: string; station: Station }) {
  const { shell } = useText();
  const notes = useNotes(id);
  const stops = (useDecided()?.look.stop.length ?? 0) > 0;
  return (
    <nav className={styles.rail} aria-label={shell.stationsName}>
      {STATIONS.map((name, i) => (
        <a key={name} className={styles.station} href={hrefOf({ page: 'reading', id, station: name })} aria-current={name === station ? 'page' : undefined}
          title={shell.stationKey(i + 1)}>
          <span className={styles.name}>{shell.stations[name]}</span>
          <span className={styles.note}>
            {name === 'findings' && stops ? <span className={styles.stop}><ToneShape tone="stop" />{shell.counts.stop}</span> : notes[name]}
          </span>
        </a>
      ))}
    </nav>
  );
}
