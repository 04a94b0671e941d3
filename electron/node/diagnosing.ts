import { createHash } from 'node:crypto';
import { diagnose } from '../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';

const digest = createHash('sha256').update(JSON.stringify(KNOWLEDGE)).digest('hex');

export const KNOWLEDGE_VERSION = KNOWLEDGE.version;

/** The findings for a sheet, from the knowledge this program carries. The same in every host. */
export const diagnoseSheet = (sheet: ReadingSheet): Findings => diagnose(sheet, { knowledge: KNOWLEDGE, digest });
