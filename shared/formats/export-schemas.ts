import { z } from 'zod';
import { findings } from './findings.v1.ts';
import { photoMeasure } from './photo-measure.v1.ts';
import { readingSheet } from './reading-sheet.v1.ts';
import { shopLines } from './shop-lines.v1.ts';

/** The open formats as JSON Schema, by file name. Written to disk by `electron/cli/write-schemas.ts`. */
export const jsonSchemas = (): Record<string, unknown> => ({
  'reading-sheet.v1.schema.json': z.toJSONSchema(readingSheet),
  'findings.v1.schema.json': z.toJSONSchema(findings),
  'shop-lines.v1.schema.json': z.toJSONSchema(shopLines),
  'photo-measure.v1.schema.json': z.toJSONSchema(photoMeasure),
});
