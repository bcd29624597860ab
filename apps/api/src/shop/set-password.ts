import type { Tx } from '../platform/database';

/** Ends the person's sessions, except `staying`. */
export async function setPassword(tx: Tx, personId: string, passwordHash: string, at: Date, staying?: string): Promise<void> {
  await tx.signInAccount.updateMany({
    where: { userId: personId, providerId: 'credential' },
    data: { password: passwordHash, updatedAt: at },
  });
  await tx.signInSession.deleteMany({ where: { userId: personId, NOT: { token: staying ?? '' } } });
}
