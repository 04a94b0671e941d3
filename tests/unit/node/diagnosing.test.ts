import { describe, expect, it, vi } from 'vitest';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';

const sheet: ReadingSheet = { format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 1 }, plugs: [{ cylinder: 1 }] };

const CURES = '../../../core/knowledge/cures.ts';
const FINDINGS = '../../../core/knowledge/findings.ts';
const STRENGTHS = '../../../core/knowledge/strengths.ts';

/** The digest that findings bear. @param file one of the knowledge's own, of which `changed` stands in the place of what it says itself */
async function digest(file?: string, changed: object = {}): Promise<string> {
  vi.resetModules();
  for (const known of [CURES, FINDINGS, STRENGTHS]) vi.doUnmock(known);
  if (file !== undefined) vi.doMock(file, async (original) => ({ ...(await original<object>()), ...changed }));
  const { diagnoseSheet } = await import('../../../electron/node/diagnosing.ts');
  return diagnoseSheet(sheet).knowledge.digest;
}

describe('the digest of the knowledge', () => {
  it('is one of SHA-256 (FIPS 180-4: 256 bits), and the same every time', async () => {
    const first = await digest();
    expect(first).toMatch(/^[0-9a-f]{64}$/);
    expect(await digest()).toBe(first);
  });

  const strengths = { 'almost always': 0.9, usually: 0.7, often: 0.45, sometimes: 0.2, rarely: 0.06, 'hardly ever': 0.016 };
  it.each([
    ['what a strength word stands for', STRENGTHS, { STRENGTHS: strengths }],
    ['how common a cause is', STRENGTHS, { PRIORS: { common: 0.041, occasional: 0.015, rare: 0.006, 'very rare': 0.002 } }],
    ['what a circumstance does to the odds', STRENGTHS, {
      MOVES: { found: 300, 'far likelier': 31, 'much likelier': 8, likelier: 3, 'less likely': 1 / 3, 'much less likely': 1 / 8, 'ruled out': 1 / 300 },
    }],
    ['how far a cure is trusted on plugs that were not cleaned', CURES, { UNCLEANED: 0.4 }],
    ['how often a symptom is felt with nothing wrong', FINDINGS, { HEALTHY_SYMPTOM: 0.02 }],
  ])('changes with %s', async (_what, file, changed) => {
    expect(await digest(file, changed)).not.toBe(await digest());
  });

  it('changes with the trust in the cure of one kind of cause', async () => {
    const { CURE_TRUST } = await import('../../../core/knowledge/cures.ts');
    expect(await digest(CURES, { CURE_TRUST: { ...CURE_TRUST, oil: { ...CURE_TRUST.oil, holds: 'often' } } })).not.toBe(await digest());
  });
});
