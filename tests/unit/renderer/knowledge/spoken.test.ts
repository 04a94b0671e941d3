import { describe, expect, it } from 'vitest';
import { spokenCauses, spokenIn } from '../../../../renderer/features/knowledge/spoken.ts';
import type { CauseFinding, Fact, Findings } from '../../../../shared/formats/findings.v1.ts';
import { plainFindings } from '../../../fixtures/plain-findings.ts';
import { sootyThird } from '../../../fixtures/plain-sheets.ts';

const fact = (text: string, bits: number, ...lines: readonly string[]): Fact => ({ about: '', text, bits, because: '', lines: [...lines] });
const cause = (id: string, belief: number, supports: Fact[], speaksAgainst: Fact[] = []): CauseFinding =>
  ({ id, name: id, belief, scope: 'cylinder', cylinders: [1], supports, speaksAgainst, sources: [] });

const plain = plainFindings(sootyThird);
const rich = cause('rich', 0.4, [fact('black', 1.5, 'rich makes soot', 'soot shows black'), fact('wide ring', 0.5, 'rich makes soot', 'soot shows ring')]);
const worn = cause('rings @ 3', 0.7, [], [fact('dry', -2, 'rings makes oil', 'oil shows wet')]);
const plugs = plain.plugs.map((plug, i) => (i < 2 ? { ...plug, causes: [rich] } : plug));
const findings: Findings = { ...plain, plugs, engine: { ...plain.engine, causes: [worn] } };

describe('what spoke in a reading', () => {
  it('is each line once, with the greatest weight it had, for or against', () => {
    expect([...spokenIn(findings)]).toEqual([['rich makes soot', 1.5], ['soot shows black', 1.5], ['soot shows ring', 0.5], ['rings makes oil', -2], ['oil shows wet', -2]]);
  });

  it('is nothing before there are findings', () => { expect(spokenIn(null).size).toBe(0); });

  it('is told cause by cause, the likeliest first, a cause of several plugs once', () => {
    expect(spokenCauses(findings).map(({ cause: { id }, facts }) => [id, facts.map(({ text }) => text)])).toEqual([['rings @ 3', ['dry']], ['rich', ['black', 'wide ring']]]);
  });
});
