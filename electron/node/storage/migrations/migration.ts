import type { Kysely } from 'kysely';

/** One step of the file's form. Never edited once released; the next step is a new file. */
export type Migration = {
  readonly version: number;
  readonly name: string;
  /** Runs inside one transaction; nothing of it stays when it throws. */
  readonly up: (db: Kysely<never>) => Promise<void>;
};
