import type { EstablishmentFields } from '@larderbook/contracts';
import { v7 } from 'uuid';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { makeAccount, type Account } from './make-account';

type Founding = {
  establishmentId: string;
  demonstration: boolean;
  details: EstablishmentFields;
  owner: Omit<Account, 'roles'>;
};

/** Throws `sent-differently` when this id is taken. */
export async function foundEstablishment(tx: Tx, { establishmentId, demonstration, details, owner }: Founding, at: Date): Promise<void> {
  const { count } = await tx.establishment.createMany({
    data: [{ id: establishmentId, demonstration, recordedAt: at }],
    skipDuplicates: true,
  });
  if (count === 0) throw new Problem('sent-differently');

  await makeAccount(tx, { ...owner, roles: ['owner'] }, { personId: owner.personId, establishmentId }, at);
  await tx.establishmentDetails.create({
    data: { ...details, establishmentId, id: v7(), recordedAt: at, recordedBy: owner.personId },
  });
}
