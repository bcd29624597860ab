import { keepCredential } from '../ledger/credential';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';

type NewPassword = { personId: string; passwordHash: string };

/** Ends the person's sessions, except `staying`. */
export async function setPassword(
  tx: Tx,
  by: Pick<Person, 'personId' | 'establishmentId'>,
  { personId, passwordHash }: NewPassword,
  at: Date,
  staying?: string,
): Promise<void> {
  await tx.signInAccount.updateMany({
    where: { userId: personId, providerId: 'credential' },
    data: { password: passwordHash, updatedAt: at },
  });
  const { username: userName } = await tx.signIn.findUniqueOrThrow({ where: { id: personId }, select: { username: true } });
  const made = { establishmentId: by.establishmentId, recordedAt: at, recordedBy: by.personId };
  await keepCredential(tx, made, { personId, userName, passwordHash });
  await tx.signInSession.deleteMany({ where: { userId: personId, NOT: { token: staying ?? '' } } });
}
