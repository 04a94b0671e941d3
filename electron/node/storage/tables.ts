import type { Selectable } from 'kysely';

/** Instants are ISO 8601 in UTC. `removed_at` hides a row; no row is ever deleted. JSON columns hold what the formats in `shared/` describe. */
export type EngineTable = {
  id: string;
  json: string;
  created_at: string;
  changed_at: string;
  removed_at: string | null;
};

export type ReadingTable = {
  id: string;
  engine_id: string;
  state: 'draft' | 'kept';
  /** Counts the saves of this reading; a page that saves names the one it saw last. */
  revision: number;
  /** The sheet's own date, for sorting; null when the sheet has none. */
  dated: string | null;
  sheet: string;
  pending: string;
  findings: string | null;
  created_at: string;
  changed_at: string;
  removed_at: string | null;
};

export type SettingTable = { name: string; json: string };

/** What was entered by hand about the heat of an engine's plugs, and settings kept as notes. */
export type HeatEntryTable = {
  id: string;
  engine_id: string;
  json: string;
  created_at: string;
  removed_at: string | null;
};

export type Tables = { engine: EngineTable; reading: ReadingTable; setting: SettingTable; heat_entry: HeatEntryTable };
export type EngineRow = Selectable<EngineTable>;
export type ReadingRow = Selectable<ReadingTable>;
