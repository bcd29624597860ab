import type { Role } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { keepCredential } from '../ledger/credential';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

export type Account = { personId: string; name: string; userName: string; roles: Role[]; passwordHash: string };

/**
 * Throws `user-name-taken`: user names are unique over every establishment, because signing in asks for nothing else.
 */
export async function makeAccount(tx: Tx, account: Account, by: { personId: string; establishmentId: string }, at: Date): Promise<void> {
  const { personId, name, userName, roles, passwordHash } = account;
  const { establishmentId } = by;
  const made = { establishmentId, recordedAt: at, recordedBy: by.personId };

  await makeSignIn(tx, { establishmentId, personId, name, userName, passwordHash, at });
  await tx.person.create({ data: { ...made, id: personId, name, userName } });
  await tx.roleGrant.create({ data: { ...made, id: v7(), personId, roles } });
  await keepCredential(tx, made, { personId, userName, passwordHash });
}

type NewSignIn = Omit<Account, 'roles'> & { establishmentId: string; at: Date };

/** The library demands a mail address and gets one that cannot exist (RFC 2606). */
async function makeSignIn(tx: Tx, { establishmentId, personId, name, userName, passwordHash, at }: NewSignIn): Promise<void> {
  const times = { createdAt: at, updatedAt: at };
  const email = `${personId}@larderbook.invalid`;
  const { count } = await tx.signIn.createMany({
    data: [{ ...times, establishmentId, id: personId, name, email, username: userName, displayUsername: userName }],
    skipDuplicates: true,
  });
  if (count === 0) throw new Problem('user-name-taken', told('user-name-is', { userName }));
  await tx.signInAccount.create({
    data: {
      ...times,
      establishmentId,
      id: v7(),
      userId: personId,
      accountId: personId,
      providerId: 'credential',
      password: passwordHash,
    },
  });
}
