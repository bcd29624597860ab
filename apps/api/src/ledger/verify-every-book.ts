import { codedText, spoken } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import { connected } from '../platform/connected';
import { Database } from '../platform/database';
import type { DatabaseUrls } from '../platform/embedded-postgres';
import type { Look } from './entries';
import { verifyBook, type Verification } from './verify-book';

/** Whoever runs the server reads English. */
const inEnglish = spoken(allWords['ledger-breaks'].en, { language: 'en', timeZone: 'UTC', timeStyle: 'US' });

export type VerifiedBook = Verification & { establishment: string };

/** As the owner of the tables: a policy put in beside those of the migrations could hide a row. */
export async function* verifyEveryBook({ ownerUrl }: DatabaseUrls): AsyncGenerator<VerifiedBook> {
  const database = new Database({ url: ownerUrl });
  try {
    for (const { id, name } of await establishments(ownerUrl)) {
      const look: Look = (work) =>
        database.transaction({ establishmentId: id }, async (tx) => {
          await tx.$queryRaw`SELECT set_config('row_security', 'off', true)`;
          return work(tx);
        });
      const found = await verifyBook(look, id);
      yield { establishment: name, ...found };
    }
  } finally {
    await database.onModuleDestroy();
  }
}

type Named = { id: string; name: string };

/**
 * Row security shows the API's role one establishment at a time. A book whose establishment is gone is found by its lines
 * and by who works there.
 */
const establishments = (ownerUrl: string): Promise<Named[]> =>
  connected(ownerUrl, async (owner) => {
    const { rows: tables } = await owner.query<{ made: boolean }>(`SELECT to_regclass('establishment') IS NOT NULL AS made`);
    if (!tables[0]?.made) return [];
    const { rows } = await owner.query<Named>(`
      SELECT e.id, coalesce((SELECT d.name FROM establishment_details d WHERE d.establishment_id = e.id
        ORDER BY d.seq DESC LIMIT 1), e.id::text) AS name
      FROM (SELECT id FROM establishment UNION SELECT establishment_id FROM ledger_entry
        UNION SELECT establishment_id FROM person UNION SELECT establishment_id FROM sign_in) e
      LEFT JOIN establishment made ON made.id = e.id ORDER BY made.recorded_at, e.id`);
    return rows;
  });

/** One line a finding. */
export function sayVerified({ establishment, entries, records, breaks, broken, ranBack }: VerifiedBook): string[] {
  const clock = ranBack.map((seq) => `${establishment}: the clock ran back at entry ${seq}.`);
  const found = breaks.map(({ seq, because }) => `${establishment}: broken at entry ${seq}. ${codedText(inEnglish, because)}`);
  if (broken > breaks.length) found.push(`${establishment}: ${broken - breaks.length} more breaks.`);
  const counted = `${entries} ${entries === 1 ? 'entry' : 'entries'} and ${records} records`;
  return [...clock, ...(broken > 0 ? found : [`${establishment}: ${counted}, all as they were written.`])];
}
