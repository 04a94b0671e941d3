import type { PlugFindings } from '../../../shared/formats/findings.v1.ts';
import { keyOf } from '../../state/places.ts';
import { useText } from '../../text/index.ts';
import { formatBelief } from '../../text/numbers.ts';
import { useTold } from '../../ui/use-told.ts';
import styles from './quiet-plugs.module.css';

/** A plug of which there is nothing more to say than its numbers. */
export const isQuiet = ({ verdict, also, causes, nextChecks }: PlugFindings): boolean =>
  verdict === 'normal' && also.length + causes.length + nextChecks.length === 0;

/** Plugs that are well, a line each, for paper. */
export function QuietPlugs({ plugs }: { plugs: readonly PlugFindings[] }) {
  const text = useText().findings;
  const told = useTold();
  if (plugs.length === 0) return null;
  const doubts = [...new Set(plugs.flatMap((plug) => plug.doubts))];
  return (
    <section className={styles.quiet}>
      <table className={styles.table}>
        <thead>
          <tr>{[text.quiet, text.believed, `${text.thermal}: ${text.thermals.tooCold}`, text.thermals.inWindow, text.thermals.tooHot, text.preIgnition].map((name) => <th key={name} scope="col">{name}</th>)}</tr>
        </thead>
        <tbody>
          {plugs.map((plug) => (
            <tr key={keyOf(plug)}>
              <th scope="row">{text.place(plug.cylinder, plug.position)}</th>
              <td>{formatBelief(plug.belief)}</td>
              <td>{formatBelief(plug.thermal.tooCold)}</td><td>{formatBelief(plug.thermal.inWindow)}</td><td>{formatBelief(plug.thermal.tooHot)}</td>
              <td>{text.risks[plug.preIgnitionRisk]}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {doubts.length > 0 && <ul className={styles.doubts}>{doubts.map((doubt) => <li key={doubt}>{told.sentence(doubt)}</li>)}</ul>}
    </section>
  );
}
