import type { SignedIn } from '@larderbook/contracts';
import type { Language } from '@larderbook/messages';
import type { Database } from '../platform/database';
import type { Person } from '../platform/person';

/** The language is no record, so the ledger has none of it. */
export async function chooseLanguage(door: Database['door'], by: Person, language: Language): Promise<SignedIn> {
  await door.signIn.update({ where: { id: by.personId }, data: { language } });
  return { ...by, language };
}
