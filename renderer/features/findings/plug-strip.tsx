import { ToggleGroup } from 'radix-ui';
import type { PlugKey, PlugPlace } from '../../../core/domain/plugs.ts';
import { beliefGrade } from '../../../core/domain/grades.ts';
import type { PlugFindings } from '../../../shared/formats/findings.v1.ts';
import type { ReadingSheet, Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { keyOf, plugAt } from '../../state/places.ts';
import { useText } from '../../text/index.ts';
import { Belief } from '../../ui/belief.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { toneOf, ToneShape } from '../../ui/judgement.tsx';
import styles from './plug-strip.module.css';

/** More plugs than this are laid out closer, or as upright tiles. */
const MANY = 12;
const VERY_MANY = 20;
const laidOut = (count: number): string => (count > VERY_MANY ? 'tiles' : count > MANY ? 'close' : 'wide');

type Props = {
  readonly sheet: ReadingSheet;
  readonly places: readonly PlugPlace[];
  readonly plugs: readonly PlugFindings[];
  readonly shown: PlugKey;
  readonly onShow: (key: PlugKey) => void;
};

function Plug({ place, tip, found }: { place: PlugPlace; tip: Tip; found: PlugFindings | undefined }) {
  const text = useText().findings;
  const where = text.place(place.cylinder, place.position);
  const verdict = found === undefined ? text.notRead : text.verdicts[found.verdict];
  const believed = found !== undefined && found.verdict !== 'undetermined' ? found.belief : undefined;
  const name = believed === undefined ? text.stripName(where, verdict) : text.stripName(where, verdict, text.beliefs[beliefGrade(believed)]);
  const tone = found === undefined ? 'open' : toneOf(found.verdict);
  return (
    <ToggleGroup.Item value={keyOf(place)} className={styles.plug} aria-label={name} data-tone={tone}>
      <span className={styles.tip}><DrawnTip tip={tip} view="end" size={44} seed={keyOf(place)} title="" /></span>
      <span className={styles.words}>
        <span className={styles.place}>{place.cylinder}{place.position !== 'only' && <span className={styles.position}>{text.positions[place.position]}</span>}</span>
        <span className={styles.verdict}>{found !== undefined && <ToneShape tone={tone} />}{verdict}</span>
        {believed !== undefined && <Belief value={believed} show="bar" />}
      </span>
    </ToggleGroup.Item>
  );
}

/** Every plug in tray order: number, drawn tip, verdict, belief. Arrow keys walk, Enter or Space shows the plug below. */
export function PlugStrip({ sheet, places, plugs, shown, onShow }: Props) {
  const text = useText().findings;
  return (
    <ToggleGroup.Root type="single" className={styles.strip} data-layout={laidOut(places.length)} aria-label={text.strip}
      value={shown} onValueChange={(key) => key !== '' && onShow(key)}>
      {places.map((place) => {
        const key = keyOf(place);
        return <Plug key={key} place={place} tip={plugAt(sheet, key)?.tip ?? {}} found={plugs.find((plug) => keyOf(plug) === key)} />;
      })}
    </ToggleGroup.Root>
  );
}
