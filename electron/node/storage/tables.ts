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

/** What is known of a photo's bytes, whichever readings show it. `problem`: why it is incomplete, in words. */
export type PhotoFileTable = {
  sha256: string;
  bytes: number;
  format: string;
  width: number;
  height: number;
  colour: 'yes' | 'greyscale' | 'cmyk' | 'transparent';
  taken_at: string | null;
  camera: string | null;
  problem: string | null;
};

export type PhotoTable = {
  id: string;
  engine_id: string;
  reading_id: string;
  sha256: string;
  name: string;
  /** For sorting: when it was taken, else when it was added. */
  shown_at: string;
  cylinder: number | null;
  position: string | null;
  view: 'end-on' | 'side' | 'strap';
  place_order: number;
  white: string | null;
  geometry: string | null;
  measure: string | null;
  annotations: string;
  added_at: string;
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

/** What the people of this workshop added to the knowledge: one line each, as `shared/formats/shop-lines.v1.ts` describes it. */
export type ShopLineTable = {
  id: string;
  json: string;
  created_at: string;
  changed_at: string;
  removed_at: string | null;
};

export type Tables = {
  engine: EngineTable; reading: ReadingTable; setting: SettingTable; heat_entry: HeatEntryTable;
  shop_line: ShopLineTable; photo_file: PhotoFileTable; photo: PhotoTable;
};
export type EngineRow = Selectable<EngineTable>;
export type ReadingRow = Selectable<ReadingTable>;
