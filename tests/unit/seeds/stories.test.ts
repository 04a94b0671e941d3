import { describe, expect, it } from 'vitest';
import { plugKey } from '../../../core/domain/plugs.ts';
import { diagnose } from '../../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../../core/knowledge/index.ts';
import { SEEDS } from '../../../seeds/index.ts';
import type { Findings } from '../../../shared/formats/findings.v1.ts';
import { parseReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import type { CureOutcome } from '../../../shared/vocabulary/follow-up.ts';
import type { Verdict } from '../../../shared/vocabulary/verdicts.ts';

type Story = {
  readonly engine: string;
  readonly date: string;
  readonly wrong: Readonly<Record<string, Verdict>>;
  /** What leads the causes of one of the wrong plugs. */
  readonly because?: readonly [plug: string, cause: RegExp];
  readonly stops: boolean;
};

/** What each reading of the demo was written to show: the plugs that are not normal, and what a workshop would say of them. Common practice, no source. */
const STORIES: readonly Story[] = [
  { engine: 'Marlisse', date: '2025-09-06', wrong: {}, stops: false },
  { engine: 'Marlisse', date: '2026-02-14', wrong: { 3: 'oil fouling' }, because: ['3', /valve guide or stem seal/i], stops: false },
  { engine: 'Marlisse', date: '2026-04-18', wrong: {}, stops: false },
  {
    engine: 'Brannoch', date: '2025-10-12', stops: false, because: ['1 lower', /lead/i],
    wrong: { '1 lower': 'lead fouling', '2 lower': 'oil fouling', '3 lower': 'lead fouling', '4 lower': 'lead fouling' },
  },
  { engine: 'Brannoch', date: '2026-03-08', wrong: {}, stops: false },
  { engine: 'Tarnelle', date: '2025-06-21', wrong: { 1: 'too hot' }, because: ['1', /air|lean|seal/i], stops: false },
  { engine: 'Tarnelle', date: '2025-08-02', wrong: { 2: 'oil fouling' }, because: ['2', /crankshaft seal/i], stops: false },
  { engine: 'Tarnelle', date: '2025-08-23', wrong: { 2: 'oil fouling' }, because: ['2', /crankshaft seal/i], stops: false },
  { engine: 'Tarnelle', date: '2025-09-13', wrong: {}, stops: false },
  { engine: 'Halvorn', date: '2025-08-30', wrong: {}, stops: false },
  {
    engine: 'Halvorn', date: '2025-11-08', stops: true, because: ['6', /boost|octane|advance/i],
    wrong: { 3: 'detonation damage', 4: 'detonation damage', 5: 'detonation damage', 6: 'detonation damage' },
  },
  { engine: 'Halvorn', date: '2025-12-06', wrong: {}, stops: false },
];

function findingsOf({ engine, date }: Pick<Story, 'engine' | 'date'>): Findings {
  const sheets = SEEDS.find(({ name }) => name.startsWith(engine))?.sheets ?? [];
  const own = sheets.map(parseReadingSheet).flatMap((sheet) => (sheet.ok && sheet.value.date === date ? [sheet.value] : []));
  if (!own[0]) throw new Error(`no sheet of the ${engine} on ${date}`);
  return diagnose(own[0], { knowledge: KNOWLEDGE, digest: 'demo' });
}

/** What the club's work came to, reading by reading: what became of the plugs at fault, and of each cure. */
type Work = { readonly engine: string; readonly date: string; readonly changes: readonly string[]; readonly cures: Readonly<Record<string, CureOutcome>> };
const WORK: readonly Work[] = [
  { engine: 'Marlisse', date: '2026-02-14', changes: ['new'], cures: {} },
  { engine: 'Marlisse', date: '2026-04-18', changes: ['cured'], cures: { 'guides-worn': 'borne out' } },
  { engine: 'Brannoch', date: '2026-03-08', changes: ['cured', 'cured', 'cured', 'cured'], cures: { 'leaded-cool-running': 'borne out' } },
  { engine: 'Tarnelle', date: '2025-08-02', changes: ['cured', 'new'], cures: { 'crank-seal-leaking': 'borne out' } },
  { engine: 'Tarnelle', date: '2025-08-23', changes: ['unchanged'], cures: { 'premix-oily': 'not borne out' } },
  { engine: 'Tarnelle', date: '2025-09-13', changes: ['cured'], cures: { 'crank-seal-leaking': 'borne out' } },
  { engine: 'Halvorn', date: '2025-11-08', changes: ['new', 'new', 'new', 'new'], cures: {} },
  { engine: 'Halvorn', date: '2025-12-06', changes: ['cured', 'cured', 'cured', 'cured'], cures: { 'boost-high': 'borne out' } },
];

describe('the demo tells its story', { timeout: 60_000 }, () => {
  it('of every sheet', () => {
    expect(STORIES).toHaveLength(SEEDS.flatMap(({ sheets }) => sheets).length);
  });

  it.each(STORIES)('$engine, $date', (story) => {
    const findings = findingsOf(story);
    const wrong = findings.plugs.filter(({ verdict }) => verdict !== 'normal').map(({ cylinder, position, verdict }) => [plugKey(cylinder, position), verdict]);
    expect(Object.fromEntries(wrong)).toEqual(story.wrong);
    if (story.because) {
      const [plug, cause] = story.because;
      expect(findings.plugs.find(({ cylinder, position }) => plugKey(cylinder, position) === plug)?.causes[0]?.name).toMatch(cause);
    }
    expect(findings.stop.length > 0).toBe(story.stops);
    expect(findings.heat.step).toBe(0);
  });

  it.each(WORK)('$engine, $date, against the reading before', ({ changes, cures, ...reading }) => {
    const { followUp } = findingsOf(reading);
    const moved = followUp?.plugs.filter(({ before, now }) => before !== 'normal' || now !== 'normal').map(({ change }) => change);
    expect(moved).toEqual(changes);
    const done = followUp?.cures.filter(({ outcome }) => outcome !== 'not done').map(({ cause, outcome }) => [cause, outcome]);
    expect(Object.fromEntries(done ?? [])).toEqual(cures);
  });

  it('of a cure that changed nothing and so points to the next cause', () => {
    const [first, second] = ['2025-08-02', '2025-08-23'].map((date) => findingsOf({ engine: 'Tarnelle', date }).plugs[1]!.causes);
    const belief = (causes: typeof first, id: string): number => causes?.find((cause) => cause.id === id)?.belief ?? 0;
    expect(belief(second, 'premix-oily')).toBeLessThan(belief(first, 'premix-oily') / 2);
    expect(belief(second, 'crank-seal-leaking @ 2')).toBeGreaterThan(0.8);
  });
});
