import { Inject, Injectable } from '@nestjs/common';
import type { addPerson, InputOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { SESSION_SECRET } from '../platform/session-secret';
import { makeAccount } from './make-account';
import { hashPassword } from './password-hash';
import type { ListedPerson } from './people.queries';
import { sealed } from './sealed';

/** The owner tells the person a first password, which the person changes. */
@Injectable()
export class AddPerson {
  constructor(
    private readonly once: RecordOnce,
    @Inject(SESSION_SECRET) private readonly secret: string,
  ) {}

  async run(input: InputOf<typeof addPerson>, by: Person): Promise<ListedPerson> {
    const { personId, name, userName, password } = input;
    const roles = [...new Set(input.roles)];
    const passwordHash = await hashPassword(password);

    return this.once.run(by, { id: personId, kind: 'person', request: sealed(input, this.secret) }, async (tx, at) => {
      if (await tx.person.findFirst({ where: { id: personId }, select: { id: true } })) throw new Problem('sent-differently');
      await makeAccount(tx, { personId, name, userName, roles, passwordHash }, by, at);
      return { personId, name, userName, roles, since: at.toISOString() };
    });
  }
}
