import type { PhotoMeasure } from '../../../../shared/formats/photo-measure.v1.ts';
import { useText } from '../../../text/index.ts';
import { formatNumber } from '../../../text/numbers.ts';
import { cssColour, GREY_BELOW, hueAndChroma } from './colour-words.ts';
import styles from './measures.module.css';

const REGIONS = ['nose', 'shellRim', 'groundElectrode', 'centreElectrode'] as const satisfies readonly (keyof PhotoMeasure['regions'])[];

const Patch = ({ lab }: { lab: readonly number[] }) => <span className={styles.patch} style={{ background: cssColour(lab) }} aria-hidden="true" />;

/** The colour of each part as measured on the corrected white: a patch of it, and its numbers. */
export function Colours({ measure: { regions, whiteReference } }: { measure: PhotoMeasure }) {
  const { measures: words, light } = useText().photos;
  const seen = REGIONS.flatMap((name) => { const region = regions[name]; return region === undefined ? [] : [{ name, region }]; });
  if (seen.length === 0) return <p>{words.noColour}</p>;
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>{words.colours} {light.reference[whiteReference.kind === 'none' ? 'none' : whiteReference.taken]}</caption>
      <thead><tr><th scope="col">{words.part}</th><th scope="col">{words.hue}</th><th scope="col">{words.chroma}</th><th scope="col">{words.spread}</th><th scope="col">{words.lightness}</th></tr></thead>
      <tbody>
        {seen.map(({ name, region: { lab, spread } }) => {
          const { hue, chroma } = hueAndChroma(lab);
          return (
            <tr key={name}>
              <th scope="row"><span className={styles.part}><Patch lab={lab} />{words.regions[name]}</span></th>
              <td>{chroma < GREY_BELOW ? words.grey : words.degrees(formatNumber(hue, 0))}</td>
              <td>{formatNumber(chroma, 1)}</td>
              <td>{words.plusMinus(formatNumber(Math.hypot(spread[1] ?? 0, spread[2] ?? 0), 1))}</td>
              <td className={styles.soft}>{formatNumber(lab[0] ?? 0, 0)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** What is measured beside colour; absent lines were not measured. */
export function OtherMeasures({ measure }: { measure: PhotoMeasure }) {
  const { measures: words } = useText().photos;
  const { darkCoverage, specks, examined, grain, heatLine, light } = measure;
  const share = (value: number): string => formatNumber(100 * value, 0);
  const lines: readonly (readonly [string, string] | undefined)[] = [
    darkCoverage === undefined ? undefined : [words.coverage, words.percent(share(darkCoverage))],
    specks === undefined ? undefined : [words.specks, examined === undefined ? String(specks) : words.specksOn(specks, share(examined))],
    grain === undefined ? undefined : [words.grain, words.grainOf(formatNumber(grain, 1))],
    heatLine === undefined ? undefined : [words.heatLine, words.heatLineAt(share(heatLine.along))],
    light === undefined ? undefined : [words.exposure, words.exposureOf(share(light.clipped), share(light.dark))],
    light?.mixed === undefined ? undefined : [words.mixed, words.mixedOf(formatNumber(light.mixed, 1))],
  ];
  return <dl className={styles.facts}>{lines.map((line) => line && <div key={line[0]}><dt>{line[0]}</dt><dd>{line[1]}</dd></div>)}</dl>;
}
