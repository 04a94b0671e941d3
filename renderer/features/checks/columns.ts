import { BORESCOPE, INJECTORS, SPARKS, SPEED_DROPS } from '../../../shared/vocabulary/checks.ts';
import type { Text } from '../../text/index.ts';
import type { Quantity } from '../../ui/quantity.ts';

export const WORDS = { spark: SPARKS, injector: INJECTORS, speedDropWhenCut: SPEED_DROPS, borescope: BORESCOPE } as const;
export type WordColumn = keyof typeof WORDS;
export const NUMBERS = { compressionKPa: 'pressure', compressionWetKPa: 'pressure', leakDownPercent: 'share', egtC: 'temperature' } as const satisfies Record<string, Quantity>;
export type NumberColumn = keyof typeof NUMBERS;
export type Column = WordColumn | NumberColumn | 'differential';

type Group = {
  readonly group: keyof Text['checks']['groups'];
  readonly columns: readonly Column[];
  /** Where the caution comes from. */
  readonly sources: readonly string[];
};

/** The bench sheet from left to right: checks that share a hazard stand under one caution. */
export const GROUPS: readonly Group[] = [
  { group: 'compression', columns: ['compressionKPa', 'compressionWetKPa'], sources: ['S15', 'W4', 'W19'] },
  { group: 'air', columns: ['leakDownPercent', 'differential'], sources: ['S23', 'S58'] },
  { group: 'spark', columns: ['spark', 'injector'], sources: ['W8', 'W9', 'W19'] },
  { group: 'running', columns: ['speedDropWhenCut', 'egtC'], sources: ['W8', 'W9'] },
  { group: 'view', columns: ['borescope'], sources: ['W6'] },
];

export const COLUMNS: readonly Column[] = GROUPS.flatMap(({ columns }) => columns);

/** The name of a cell in the address of the page. */
export const cellName = (column: Column, cylinder: number): string => `${column}-${cylinder}`;
