import { enginesAndReadings } from './0001-engines-and-readings.ts';
import { heatEntries } from './0002-heat-entries.ts';
import { shopLines } from './0003-shop-lines.ts';
import { photos } from './0004-photos.ts';
import type { Migration } from './migration.ts';

/** Every step in order; the last one's version is the form this program writes. */
export const MIGRATIONS: readonly Migration[] = [enginesAndReadings, heatEntries, shopLines, photos];
