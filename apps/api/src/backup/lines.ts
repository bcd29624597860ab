import { z } from 'zod';
import { Head } from '../ledger/heads-of-books';

/** The lines of a backup that are not rows, each one JSON object. README.md beside this describes the whole. */
export const formatName = 'larderbook-backup';
export const formatVersion = 1;

export const FirstLine = z.object({
  format: z.literal(formatName),
  version: z.number(),
  madeAt: z.iso.datetime(),
  larderbook: z.string(),
  postgres: z.string(),
  migrations: z.array(z.string()),
  establishments: z.array(Head),
});
export type FirstLine = z.infer<typeof FirstLine>;

export const Section = z.object({ section: z.string(), table: z.string(), columns: z.array(z.string()) });
export const EndOfTable = z.object({ end: z.literal('table'), table: z.string(), rows: z.number(), sha256: z.string() });
export const LastLine = z.object({ end: z.literal('backup'), rows: z.number(), sha256: z.string() });

/** As PostgreSQL ends rows in a script: no row can read so, because a backslash in one is doubled. */
export const endOfRows = '\\.\n';
