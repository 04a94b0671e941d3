import { z } from 'zod';
import type { Channel } from './channel-names.ts';
import { engineDraftChannels } from './channels-engine-draft.ts';
import { followUpChannels } from './channels-followup.ts';
import { heatChannels } from './channels-heat.ts';
import { photoChannels } from './channels-photo.ts';
import { shopChannels } from './channels-shop.ts';
import { engine } from './formats/engine.ts';
import { findings } from './formats/findings.v1.ts';
import { firstLook } from './formats/first-look.ts';
import { readingSheet } from './formats/reading-sheet.v1.ts';
import { record, text, type Problem } from './formats/strict.ts';
import type { Result } from './result.ts';

const id = z.uuid();
const instant = z.iso.datetime();
/** As written on a sheet: a day, or a moment with or without its offset. */
const sheetDate = z.union([z.iso.date(), z.iso.datetime({ offset: true, local: true })]);

/** What went wrong, as a value the page can show. `message` names the place and the remedy in words. */
export type AppError =
  | { readonly code: 'forbidden' }
  | { readonly code: 'bad-request'; readonly problems: readonly Problem[] }
  | { readonly code: 'not-found'; readonly what: string }
  | { readonly code: 'conflict'; readonly message: string }
  | { readonly code: 'read-only'; readonly message: string }
  | { readonly code: 'library-unavailable'; readonly message: string }
  | { readonly code: 'disk-full'; readonly message: string }
  | { readonly code: 'internal'; readonly message: string };

export const settings = record({
  theme: z.enum(['system', 'light', 'dark']),
  units: z.enum(['metric', 'inch']),
  textSize: z.enum(['normal', 'large']),
});
export type Settings = z.output<typeof settings>;
export const DEFAULT_SETTINGS: Settings = { theme: 'system', units: 'metric', textSize: 'normal' };

/** `trouble` is set when the library cannot be used as it should; the words say what to do. */
const libraryState = record({
  kind: z.enum(['own', 'demo']),
  folder: text(4096),
  readOnly: z.boolean(),
  trouble: record({ code: z.enum(['in-use', 'damaged', 'newer', 'cannot-open', 'disk-full']), message: text(4096), backups: z.array(text(200)) }).nullable(),
});
export type LibraryState = z.output<typeof libraryState>;

const appInfo = record({ version: text(40), host: z.enum(['electron', 'loopback']), knowledge: text(40), library: libraryState });
export type AppInfo = z.output<typeof appInfo>;

/** `readings` and `lastReadingAt` are of those that are kept; `draft`: one is still open. */
const engineRecord = record({
  id, engine, createdAt: instant, changedAt: instant, readings: z.number().int(), lastReadingAt: sheetDate.nullable(), draft: z.boolean(),
});
export type EngineRecord = z.output<typeof engineRecord>;

/** `pending`: what was typed into a field but cannot be taken yet, by the path of the field in the sheet. Kept so that nothing typed is lost. */
export const PENDING_LIMIT = 200;
const pending = z.record(text(200), text(PENDING_LIMIT));
const readingSummary = record({
  id, engineId: id, title: text(200), date: text(40).nullable(), state: z.enum(['draft', 'kept']), changedAt: instant,
  plugsRead: z.number().int(), verdicts: z.array(text(60)),
});
export type ReadingSummary = z.output<typeof readingSummary>;

const readingRecord = record({
  id, engineId: id, state: z.enum(['draft', 'kept']), revision: z.number().int(), changedAt: instant,
  sheet: readingSheet, pending, findings: findings.nullable(),
});
export type ReadingRecord = z.output<typeof readingRecord>;

const nothing = z.null();

/** Most that a reading sheet may hold as text, in characters; as a file, in bytes. */
export const SHEET_LIMIT = 8_000_000;

/** Why a file that was to be opened could not be read. */
const unread = z.enum(['missing', 'not a file', 'too large', 'unreadable']);
export type Unread = z.output<typeof unread>;

/** A file that the system asked the program to open, by its name without folders. */
const openedFile = z.union([record({ name: text(1024), text: z.string() }), record({ name: text(1024), unread })]);
export type OpenedFile = z.output<typeof openedFile>;

/** One entry a channel: what may go in and what comes out. Preload, door, handlers, bridge and tests derive from it. */
export const channels = {
  'app.info': { input: nothing, output: appInfo },
  'settings.get': { input: nothing, output: settings },
  'settings.save': { input: settings, output: settings },
  'library.use': { input: record({ kind: z.enum(['own', 'demo']) }), output: appInfo },
  'library.recover': { input: record({ backup: text(200) }), output: appInfo },
  'engine.list': { input: nothing, output: z.array(engineRecord) },
  'engine.save': { input: record({ id: id.nullable(), engine }), output: engineRecord },
  'engine.remove': { input: record({ id }), output: nothing },
  'engine.restore': { input: record({ id }), output: engineRecord },
  'reading.list': { input: record({ engineId: id }), output: z.array(readingSummary) },
  'reading.get': { input: record({ id }), output: readingRecord },
  /** Starts a draft, or gives back the draft of this engine that is still open. */
  'reading.start': { input: record({ engineId: id }), output: readingRecord },
  /** Saves a draft. `revision` is the one the page last saw; another one on disk is a conflict, and nothing is overwritten. */
  'reading.save': { input: record({ id, revision: z.number().int(), sheet: readingSheet, pending }), output: record({ revision: z.number().int(), changedAt: instant }) },
  /** Diagnoses a draft, stores the findings with it and closes it. */
  'reading.keep': { input: record({ id }), output: readingRecord },
  'reading.reopen': { input: record({ id }), output: readingRecord },
  'reading.remove': { input: record({ id }), output: nothing },
  'reading.restore': { input: record({ id }), output: readingRecord },
  /** `known`: the sheet was in the library already. */
  'reading.import': {
    input: record({ text: z.string().max(SHEET_LIMIT, { error: 'the file is too large; at most 8 MB' }) }),
    output: record({ engineId: id, readingId: id, known: z.boolean() }),
  },
  /** The next file that the system asked the program to open, each given once; null when there is none. */
  'reading.opened': { input: nothing, output: openedFile.nullable() },
  'reading.export': { input: record({ id }), output: record({ fileName: text(200), text: z.string() }) },
  ...engineDraftChannels,
  ...followUpChannels,
  ...heatChannels,
  ...photoChannels,
  ...shopChannels,
  /** What is decided of a sheet, long before it is explained. */
  'first-look': { input: record({ sheet: readingSheet }), output: firstLook },
  diagnose: { input: record({ sheet: readingSheet }), output: findings },
} as const satisfies Record<Channel, { input: z.ZodType; output: z.ZodType }>;

export type Input<C extends Channel> = z.output<(typeof channels)[C]['input']>;
export type Output<C extends Channel> = z.output<(typeof channels)[C]['output']>;
export type Reply<C extends Channel> = Result<Output<C>, AppError>;
export type Handlers = { readonly [C in Channel]: (input: Input<C>) => Promise<Reply<C>> };

/** What the preload puts on `window.corenose`, and what the loopback page builds from `fetch`. */
export type Bridge = { readonly [C in Channel]: (input: Input<C>) => Promise<Reply<C>> };
