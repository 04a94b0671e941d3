import { memo, useDeferredValue, useMemo } from 'react';
import type { Learned } from '../../../core/heat/anchors.ts';
import { REPEATS, type DriveAnswer } from '../../../core/heat/drive-answer.ts';
import { legsOf, legsOfLog } from '../../../core/thermal/drive-log.ts';
import { hrefOf } from '../../app/route.ts';
import { useText } from '../../text/index.ts';
import { Choice } from '../../ui/choice.tsx';
import { Notice } from '../../ui/notice.tsx';
import { Slider } from '../../ui/slider.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import type { HeatBench } from './bench.ts';
import { DriveChart, FoulingChart } from './drive-charts.tsx';
import { ImportLog, LegsEditor } from './drive-legs.tsx';
import { DRIVE_NAMES, DRIVES } from './drives.ts';
import styles from './heat.module.css';
import { BasisMark, basisOf, Rows } from './pieces.tsx';
import { someProblems } from './problem-words.ts';
import { useDrive } from './use-drive.ts';
import { useHeatWords } from './use-words.ts';

function useRows(): (answer: DriveAnswer) => readonly (readonly [string, string])[] {
  const { heat } = useText();
  const quantity = useQuantity();
  return ({ windows, insulation }) => [
    ...(['below', 'inside', 'above'] as const).map((part) => {
      const [a, b] = [windows.low[part], windows.high[part]];
      return [heat.drive.parts[part], heat.band(heat.times(windows.middle[part]), heat.times(Math.min(a, b)), heat.times(Math.max(a, b)))] as const;
    }),
    ...[1, 5, 10, REPEATS].map((times) => [heat.drive.after(times), quantity('insulation', Number((insulation[times - 1] ?? 0).toPrecision(3)))] as const),
  ];
}

/** Whether the drive fouls the plug, gathers soot slowly, or burns off what the cold start laid down: then a repeat leaves the nose as it was. */
function lessonOf({ foulsAfter, insulation }: DriveAnswer): 'fouls' | 'slowly' | 'clean' {
  if (foulsAfter !== undefined) return 'fouls';
  const [middle, last] = [insulation[REPEATS / 2 - 1] ?? 0, insulation[REPEATS - 1] ?? 0];
  return last < 0.7 * middle ? 'slowly' : 'clean';
}

/** What the drive does to the nose, in sentences, charts and numbers. */
const Outcome = memo(({ answer, learned }: { answer: DriveAnswer; learned: Learned }) => {
  const { heat: { drive } } = useText();
  const rows = useRows();
  const { windows, seconds, sooting, foulsAfter } = answer;
  return (
    <section className={styles.block} aria-label={drive.title}>
      <p className={styles.answer}>{drive.fouls(foulsAfter)}</p>
      <p className={styles.lead}>
        {drive.why(sooting, (windows.middle.inside + windows.middle.above) / seconds)} {drive.lesson[lessonOf(answer)]}
      </p>
      <BasisMark basis={basisOf(learned)} />
      <DriveChart answer={answer} />
      <h3>{drive.fouling}</h3>
      <FoulingChart answer={answer} />
      <Rows label={drive.title} rows={rows(answer)} />
      <p className={styles.soft}>{drive.caution}</p>
    </section>
  );
});

/** A drive from cold: where the tip was, and what repeating it does to the insulation. */
export function DrivePart({ id, engine, setting, learned, trial, onTry }: HeatBench) {
  const { heat } = useText();
  const quantity = useQuantity();
  const words = useHeatWords();
  const { legs: text = DRIVES['short trips in frost'], log, start = -10 } = trial;
  const given = useMemo(() => (log === undefined ? legsOf(text) : legsOfLog(log.text)), [text, log]);
  const later = useDeferredValue(start);
  const question = useMemo(
    () => (given.ok ? { engine, setting, legs: given.value, start: later, belief: learned.belief } : undefined), [engine, setting, given, later, learned],
  );
  const { answer, computing } = useDrive(question);
  return (
    <div className={styles.driven}>
      <section className={styles.block}>
        <h2>{heat.drive.title}</h2>
        <Choice label={heat.drive.usual} options={DRIVE_NAMES} value={log === undefined ? DRIVE_NAMES.find((name) => DRIVES[name] === text) : undefined}
          nameOf={(name) => heat.drive.names[name]} always onChange={(name) => { if (name !== undefined) onTry({ legs: DRIVES[name], log: undefined }); }} />
        <Slider label={heat.drive.start} remark={heat.drive.startGrade} value={start} shown={quantity('temperature', start)} least={-30} most={40} step={1}
          onChange={(next) => onTry({ start: next })} />
        {log === undefined && <LegsEditor text={text} onChange={(legs) => onTry({ legs })} />}
        {!given.ok && (
          <Notice tone="problem" {...(log !== undefined && { title: heat.drive.importFailed(log.name) })}>
            <ul className={styles.list}>{someProblems(given.error, heat.drive).map((problem) => <li key={problem}>{problem}</li>)}</ul>
          </Notice>
        )}
        <ImportLog log={log} legs={given.ok ? given.value : []} onLog={(taken) => onTry({ log: taken })} />
        <p className={styles.soft}>
          {heat.drive.help} {heat.drive.asSet(heat.steps(setting.heatStep), quantity('angle', setting.advance), quantity('temperature', setting.coolant))}{' '}
          <a href={hrefOf({ page: 'engine-heat', id, part: 'what-if' })}>{heat.change}</a>
        </p>
      </section>
      <div className={styles.answers}>
        <p className={styles.soft} role="status">{computing && heat.drive.computing}</p>
        {answer?.ok && <Outcome answer={answer.value} learned={learned} />}
        {answer?.ok === false && <Notice tone="problem" title={heat.refused}>{answer.error.map(words.driveProblem).join(' ')}</Notice>}
      </div>
    </div>
  );
}
