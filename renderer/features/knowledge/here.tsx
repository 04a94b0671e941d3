import { useEffect, useState } from 'react';
import { barsFromBefore } from '../../../core/followup/earlier-bars.ts';
import { barsFor } from '../../../core/inference/stop-rules.ts';
import { evidenceOf } from '../../../core/inference/evidence.ts';
import type { AppError } from '../../../shared/channels.ts';
import type { Fact, Findings } from '../../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { hrefOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatDate, formatNumber } from '../../text/numbers.ts';
import { Belief } from '../../ui/belief.tsx';
import { ButtonLink } from '../../ui/button.tsx';
import { Notice } from '../../ui/notice.tsx';
import { OwnMark } from '../../ui/own-mark.tsx';
import { useTold } from '../../ui/use-told.ts';
import { entryHref, lineHref } from './addresses.ts';
import { lineWords } from './line-words.ts';
import lineStyles from './lines.module.css';
import { useLooking } from './looking.ts';
import styles from './page.module.css';
import { Part } from './part.tsx';
import { spokenCauses, type Spoken } from './spoken.ts';

const bitsText = (bits: number): string => `${bits > 0 ? '+' : '−'}${formatNumber(Math.abs(bits), 1)}`;

function FactRow({ fact }: { fact: Fact }) {
  const { knowledge } = useLooking();
  const text = useText().knowledge;
  const told = useTold();
  return (
    <li className={lineStyles.line}>
      <div className={lineStyles.seen}>
        <span className={lineStyles.what}>{told.sentence(fact.text)}</span><span className={lineStyles.spoke}>{text.here.bits(bitsText(fact.bits))}</span>
      </div>
      <div className={lineStyles.reason}>
        {(fact.lines ?? []).length === 0 && <p className={styles.soft}>{text.here.noLine}</p>}
        {fact.lines?.map((key) => <p key={key}><a href={lineHref(key, knowledge)}>{lineWords(key, knowledge, { knowledge: text, told })}</a></p>)}
        {fact.addedBy !== undefined && <p><OwnMark by={fact.addedBy} /></p>}
      </div>
    </li>
  );
}

function CauseSpoken({ spoken: { cause, facts } }: { spoken: Spoken }) {
  const told = useTold();
  return (
    <div className={styles.group}>
      <h4 className={styles.called}><a href={entryHref('causes', cause.id.split(' @ ')[0] ?? cause.id)}>{told.cause(cause.id, cause.name)}</a> <Belief value={cause.belief} /></h4>
      <ul className={lineStyles.lines}>{facts.map((fact) => <FactRow key={`${fact.about} ${fact.text}`} fact={fact} />)}</ul>
    </div>
  );
}

function Rules({ findings, sheet }: { findings: Findings; sheet: ReadingSheet }) {
  const { knowledge } = useLooking();
  const { here, rules, term } = useText().knowledge;
  const told = useTold();
  const now = barsFor(knowledge.barsOnHotter, evidenceOf(sheet));
  const bars = [...now, ...barsFromBefore(knowledge.barsOnHotter, sheet, now)];
  return (
    <>
      <Part title={here.stops}>
        {findings.stop.length === 0 ? <p>{here.noStops}</p> : <ul className={styles.plain}>{findings.stop.map(({ rule, why }) => <li key={rule}><a href={entryHref('stops', rule)}>{told.sentence(why)}</a></li>)}</ul>}
      </Part>
      <Part title={here.bars}>
        {bars.length === 0 ? <p>{here.noBars}</p> : <ul className={styles.plain}>{bars.map(({ id, sign, anyOf }) => (
          <li key={`${id} ${sign}`}>{anyOf.length === 0 ? told.sentence(sign) : <a href={entryHref('bars', id)}>{rules.bar(told.sentence(sign), anyOf.map(term))}</a>}</li>
        ))}</ul>}
      </Part>
    </>
  );
}

function Checks({ findings }: { findings: Findings }) {
  const { here } = useText().knowledge;
  const told = useTold();
  const advised = [...findings.plugs.flatMap(({ nextChecks }) => nextChecks), ...findings.engine.nextChecks];
  const once = advised.filter(({ id }, i) => advised.findIndex((other) => other.id === id) === i);
  if (once.length === 0) return null;
  return <Part title={here.checks}><ul className={styles.plain}>{once.map(({ id, name }) => <li key={id}><a href={entryHref('checks', id)}>{told.check(id, name)}</a></li>)}</ul></Part>;
}

function SpokeIn({ id, findings, sheet }: { id: string; findings: Findings; sheet: ReadingSheet }) {
  const { knowledge: { here }, shell, engines } = useText();
  const causes = spokenCauses(findings);
  const facts = causes.flatMap((spoken) => spoken.facts);
  const lines = new Set(facts.flatMap((fact) => fact.lines ?? []));
  const own = new Set(facts.filter(({ addedBy }) => addedBy !== undefined).flatMap((fact) => fact.lines ?? []));
  const name = [sheet.engine.name ?? engines.unnamed, sheet.title ?? (sheet.date === undefined ? shell.reading.noDate : formatDate(sheet.date))].join(', ');
  return (
    <>
      <header className={styles.head}>
        <h2>{here.title(name)}</h2>
        <p className={styles.lead}>{here.about} {here.counted(lines.size, own.size)}</p>
        <div className={styles.tools}><ButtonLink href={hrefOf({ page: 'reading', id, station: 'findings' })}>{here.back}</ButtonLink></div>
      </header>
      <Rules findings={findings} sheet={sheet} />
      <Part title={here.causes}>
        {causes.length === 0 ? <p>{here.noCauses}</p> : causes.map((spoken) => <CauseSpoken key={spoken.cause.id} spoken={spoken} />)}
      </Part>
      <Checks findings={findings} />
    </>
  );
}

/** Which rules and lines spoke in one reading, each with its weight. @param id of the reading */
export function Here({ id }: { id: string | undefined }) {
  const text = useText();
  const reading = useStore((state) => (state.reading?.id === id || id === undefined ? state.reading : null));
  const openReading = useStore((state) => state.openReading);
  const [problem, setProblem] = useState<AppError | null>(null);
  const wanted = reading === null ? id : undefined;
  useEffect(() => {
    if (wanted !== undefined) void openReading(wanted).then(setProblem);
  }, [wanted, openReading]);
  if (problem !== null && reading === null) return <Notice tone="problem">{text.shell.error(problem)}</Notice>;
  if (reading === null && id === undefined) return <Notice>{text.knowledge.here.choose}</Notice>;
  if (reading === null || reading.findings === null) return <p role="status">{text.findings.waiting}</p>;
  return <SpokeIn id={reading.id} findings={reading.findings} sheet={reading.history.now.sheet} />;
}
