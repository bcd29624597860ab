import { removalKinds } from '@larderbook/contracts';
import type { Phrase } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { named } from '../platform/account';

/** Why weight left, by its name; a kind that this version does not know stands as it was recorded. */
export function removedAs(kind: string): Phrase {
  const known = removalKinds.find((each) => each === kind);
  return known ? named(codeOf('removed', known)) : named('removed-otherwise', { kind });
}
