import { useState } from 'react';
import type { PlugKey, PlugPlace } from '../../../core/domain/plugs.ts';
import type { Findings, NextCheck } from '../../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { keyOf } from '../../state/places.ts';
import { useText } from '../../text/index.ts';
import { formatDate } from '../../text/numbers.ts';
import { Button } from '../../ui/button.tsx';
import { Answer, Closing, EngineFindings } from './answer.tsx';
import styles from './findings.module.css';
import { PaperContext } from './paper.ts';
import { PlugDetail } from './plug-detail.tsx';
import { PlugStrip } from './plug-strip.tsx';
import { isQuiet, QuietPlugs } from './quiet-plugs.tsx';
import { usePrinting } from './use-printing.ts';
import { worstPlug } from './worst.ts';

type Props = {
  readonly findings: Findings;
  readonly sheet: ReadingSheet;
  readonly places: readonly PlugPlace[];
  /** Where the outcome of a check is written down. */
  readonly hrefOf: (check: NextCheck) => string;
  readonly onShow?: (key: PlugKey) => void;
  /** What is going on with the findings, such as that they are being worked out anew. */
  readonly status?: string;
};

function PaperHead({ sheet }: { sheet: ReadingSheet }) {
  const text = useText().findings;
  const day = sheet.date === undefined ? undefined : formatDate(sheet.date);
  return <h1 className={styles.onPaper}>{text.title}: {text.ofEngine(sheet.engine.name, sheet.title, day)}</h1>;
}

/**
 * Findings as a colleague would tell them: the answer for the engine on one side, the plug in question on the other, all plugs above.
 * On paper the cautions come last.
 */
export function FindingsView({ findings, sheet, places, hrefOf, onShow, status = '' }: Props) {
  const text = useText().findings;
  const printing = usePrinting();
  const [picked, setPicked] = useState<PlugKey | null>(null);
  const shown = picked ?? worstPlug(findings.plugs) ?? '';
  const quiet = printing ? findings.plugs.filter(isQuiet) : [];
  const details = printing ? findings.plugs.filter((plug) => !isQuiet(plug)) : findings.plugs.filter((plug) => keyOf(plug) === shown);
  return (
    <PaperContext value={printing}>
      <div className={styles.view}>
        <PaperHead sheet={sheet} />
        <div className={styles.top}>
          <PlugStrip sheet={sheet} places={places} plugs={findings.plugs} shown={shown} onShow={(key) => { setPicked(key); onShow?.(key); }} />
        </div>
        <div className={styles.panes}>
          <div className={styles.pane}>
            <Answer findings={findings}>
              <p role="status" className={styles.status}>{status}</p>
              <Button onClick={() => window.print()}>{text.print}</Button>
            </Answer>
            <EngineFindings findings={findings} hrefOf={hrefOf} />
            {!printing && <Closing findings={findings} />}
          </div>
          <section className={styles.pane} aria-label={text.plugs} tabIndex={0}>
            <h2 className={styles.onPaper}>{text.plugs}</h2>
            {details.map((plug) => <PlugDetail key={keyOf(plug)} plug={plug} sheet={sheet} hrefOf={hrefOf} />)}
            <QuietPlugs plugs={quiet} />
            {details.length + quiet.length === 0 && <p>{text.notRead}</p>}
          </section>
        </div>
        {printing && <Closing findings={findings} />}
      </div>
    </PaperContext>
  );
}
