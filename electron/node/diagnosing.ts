import { createHash } from 'node:crypto';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';

/** TEMPORARY until core/inference/diagnose.ts and core/knowledge/index.ts are there. */
const [core, knowledge] = await Promise.all(['../../core/inference/diagnose.ts', '../../core/knowledge/index.ts'].map((path) => import(path).catch(() => ({})))) as [
  { diagnose?: (sheet: ReadingSheet, given: unknown) => Findings }, { KNOWLEDGE?: { version: string } }];
const KNOWLEDGE = knowledge.KNOWLEDGE ?? { version: 'none' };
const digest = createHash('sha256').update(JSON.stringify(KNOWLEDGE)).digest('hex');

export const KNOWLEDGE_VERSION = KNOWLEDGE.version;
export const diagnoseSheet = (sheet: ReadingSheet): Findings => {
  if (core.diagnose === undefined) throw new Error('core/inference/diagnose.ts is not written yet');
  return core.diagnose(sheet, { knowledge: KNOWLEDGE, digest });
};
