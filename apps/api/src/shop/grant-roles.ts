import { Injectable } from '@nestjs/common';
import type { grantRoles, InputOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { listPeople, type ListedPerson } from './people.queries';

/** A person without any role has left, and their sessions end. */
@Injectable()
export class GrantRoles {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof grantRoles>, by: Person): Promise<ListedPerson> {
    const { grantId, personId } = input;
    const roles = [...new Set(input.roles)];

    return this.once.run(by, { id: grantId, kind: 'role grant', subject: personId, request: input }, async (tx, at) => {
      const people = await listPeople(tx);
      const person = people.find((one) => one.personId === personId);
      if (!person) throw new Problem('not-found', told('no-such-person'));
      const isOwned = roles.includes('owner') || people.some((one) => one.personId !== personId && one.roles.includes('owner'));
      if (!isOwned) throw new Problem('last-owner', told('only-owner', { name: person.name }));

      const grant = {
        establishmentId: by.establishmentId,
        id: grantId,
        personId,
        roles,
        recordedAt: at,
        recordedBy: by.personId,
      };
      const { count } = await tx.roleGrant.createMany({ data: [grant], skipDuplicates: true });
      if (count === 0) throw new Problem('sent-differently');
      if (roles.length === 0) await tx.signInSession.deleteMany({ where: { userId: personId } });
      return { ...person, roles };
    });
  }
}
