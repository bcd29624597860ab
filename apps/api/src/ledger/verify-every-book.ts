import { codedText, spoken } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import { connected } from '../platform/connected';
import { Database } from '../platform/database';
import type { DatabaseUrls } from '../platform/embedded-postgres';
import type { Look } from './entries';
import { headsOfBooks } from './heads-of-books';
import { verifyBook, type Verification } from './verify-book';

/** Whoever runs the server reads English. */
const inEnglish = spoken(allWords['ledger-breaks'].en, { language: 'en', timeZone: 'UTC', timeStyle: 'US' });

export type VerifiedBook = Verification & { establishment: string };

/** As the owner of the tables: a policy put in beside those of the migrations could hide a row. */
export async function* verifyEveryBook({ ownerUrl }: DatabaseUrls): AsyncGenerator<VerifiedBook> {
  const database = new Database({ url: ownerUrl });
  try {
    for (const { establishment: id, name } of await connected(ownerUrl, headsOfBooks)) {
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

/** One line a finding. */
export function sayVerified({ establishment, entries, records, breaks, broken, ranBack }: VerifiedBook): string[] {
  const clock = ranBack.map((seq) => `${establishment}: the clock ran back at entry ${seq}.`);
  const found = breaks.map(({ seq, because }) => `${establishment}: broken at entry ${seq}. ${codedText(inEnglish, because)}`);
  if (broken > breaks.length) found.push(`${establishment}: ${broken - breaks.length} more breaks.`);
  const counted = `${entries} ${entries === 1 ? 'entry' : 'entries'} and ${records} records`;
  return [...clock, ...(broken > 0 ? found : [`${establishment}: ${counted}, all as they were written.`])];
}
