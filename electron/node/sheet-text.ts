import { parseReadingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Problem } from '../../shared/formats/strict.ts';
import type { Result } from '../../shared/result.ts';
import { parseJsonText } from './json-text.ts';

/** Reads a sheet from the text of a file. A fault of the JSON is told with its line and column, any other with its path. */
export const parseSheetText = (text: string): Result<ReadingSheet, Problem[]> => parseJsonText(text, 'a reading sheet', parseReadingSheet);
