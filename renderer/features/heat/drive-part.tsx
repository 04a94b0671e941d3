import { memo, useMemo, useState } from 'react';
import type { Belief } from '../../../core/thermal/belief.ts';
import type { DriveSecond } from '../../../core/thermal/drive.ts';
import { SELF_CLEANING, TOO_HOT } from '../../../core/thermal/limits.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import { useText } from '../../text/index.ts';
import { Choice } from '../../ui/choice.tsx';
import { Notice } from '../../ui/notice.tsx';
import { Slider } from '../../ui/slider.tsx';
import { TextField } from '../../ui/text-field.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import { driveOf, DRIVES, legsOf, REPEATS, type DriveAnswer, type DriveName } from './drive.ts';
import styles from './heat.module.css';
import { problemWords } from './problem-words.ts';
import type { Setting } from './setting.ts';

const WIDTH = 760;
const HEIGHT = 220;
const EDGE = { left: 64, right: 16, top: 10, bottom: 30 };
const MOST = 1000;
const NAMES = Object.keys(DRIVES) as readonly DriveName[];

const up = (celsius: number): number => EDGE.top + ((MOST - Math.min(MOST, celsius)) / MOST) * (HEIGHT - EDGE.top - EDGE.bottom);

/** At most some three hundred points of a line: more cannot be seen. */
function line(seconds: readonly DriveSecond[]): readonly string[] {
  const every = Math.max(1, Math.floor(seconds.length / 300));
  const across = (at: number): number => EDGE.left + (at / seconds.length) * (WIDTH - EDGE.left - EDGE.right);
  return seconds.filter((_, i) => i % every === 0).map(({ at, plug }) => `${across(at).toFixed(1)} ${up(plug.nose - 273.15).toFixed(1)}`);
}

function Course({ answer }: { answer: DriveAnswer }) {
  const { heat } = useText();
  const quantity = useQuantity();
  const [left, right] = [EDGE.left, WIDTH - EDGE.right];
  const area = [...line(answer.low), ...[...line(answer.high)].reverse()];
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={heat.drive.chart}>
      <g className={styles.limit}>
        <rect x={left} width={right - left} y={up(TOO_HOT.middle)} height={up(SELF_CLEANING.middle) - up(TOO_HOT.middle)} />
        <text x={left + 8} y={up(TOO_HOT.middle) + 16}>{heat.drive.window}</text>
      </g>
      {[0, 450, 850].map((tick) => <text key={tick} className={styles.tick} x={left - 8} y={up(tick) + 5} textAnchor="end">{quantity('temperature', tick)}</text>)}
      <text className={styles.tick} x={right} y={HEIGHT - 8} textAnchor="end">{heat.times(answer.middle.length)}</text>
      <path className={styles.area} d={`M${area.join('L')}Z`} />
      <g className={styles.rung} data-own=""><path d={`M${line(answer.middle).join('L')}`} /></g>
    </svg>
  );
}

function Outcome({ answer: { windows, insulation, foulsAfter } }: { answer: DriveAnswer }) {
  const { heat } = useText();
  const row = (part: 'below' | 'inside' | 'above'): string => {
    const [a, b] = [windows.low[part], windows.high[part]];
    return heat.band(heat.times(windows.middle[part]), heat.times(Math.min(a, b)), heat.times(Math.max(a, b)));
  };
  const quantity = useQuantity();
  const megohm = (value = 0): string => quantity('insulation', Number(value.toPrecision(3)));
  return (
    <>
      <table className={styles.table} aria-label={heat.drive.title}>
        <tbody>
          {(['below', 'inside', 'above'] as const).map((part) => <tr key={part}><th scope="row">{heat.drive.parts[part]}</th><td>{row(part)}</td></tr>)}
          {[1, 5, 10, REPEATS].map((times) => <tr key={times}><th scope="row">{heat.drive.after(times)}</th><td>{megohm(insulation[times - 1])}</td></tr>)}
        </tbody>
      </table>
      <p><strong>{heat.drive.fouls(foulsAfter)}</strong> <span className={styles.soft}>{heat.drive.caution}</span></p>
    </>
  );
}

type Props = { readonly engine: Engine; readonly setting: Setting; readonly belief: Belief };

/** A drive from cold: where the tip was, and what repeating it does to the insulation. */
export const DrivePart = memo(({ engine, setting, belief }: Props) => {
  const { heat } = useText();
  const quantity = useQuantity();
  const [text, setText] = useState<string>(DRIVES['short trips in frost']);
  const [start, setStart] = useState(-10);
  const legs = useMemo(() => legsOf(text), [text]);
  const answer = useMemo(() => (legs.ok ? driveOf(engine, setting, legs.value, start, belief) : undefined), [engine, setting, legs, start, belief]);
  return (
    <section className={styles.ladder}>
      <h2>{heat.drive.title}</h2>
      <p className={styles.soft}>{heat.drive.help}</p>
      <Choice label={heat.drive.usual} options={NAMES} value={NAMES.find((name) => DRIVES[name] === text)} nameOf={(name) => heat.drive.names[name]} always
        onChange={(name) => { if (name !== undefined) setText(DRIVES[name]); }} />
      <TextField label={heat.drive.legs} lines="several" limit={8000} value={text} onChange={setText} problem={legs.ok ? undefined : legs.error.map((problem) => problemWords(problem, heat.drive)).join(' ')} />
      <Slider label={heat.drive.start} remark={heat.grades.inlet} value={start} shown={quantity('temperature', start)} least={-30} most={40} step={1} onChange={setStart} />
      {answer?.ok && <><Course answer={answer.value} /><Outcome answer={answer.value} /></>}
      {answer?.ok === false && <Notice tone="problem" title={heat.refused}>{answer.error.join(' ')}</Notice>}
    </section>
  );
});
