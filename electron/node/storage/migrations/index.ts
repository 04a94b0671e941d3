import { enginesAndReadings } from './0001-engines-and-readings.ts';
import { photos } from './0002-photos.ts';
import { photos } from './0004-photos.ts';
import type { Migration } from './migration.ts';

/** Every step in order; the last one's version is the form this program writes. */
export const MIGRATIONS: readonly Migration[] = [enginesAndReadings, photos, photos];
