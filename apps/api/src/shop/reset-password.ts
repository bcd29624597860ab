import { Injectable } from '@nestjs/common';
import type { InputOf, resetPassword } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { RecordOnce } from '../ledger/record-once';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { hashPassword } from './password-hash';
import { setPassword } from './set-password';

/** Whoever knows the password can sign in that person's name, so the ledger records it. */
@Injectable()
export class ResetPassword {
  constructor(private readonly once: RecordOnce) {}

  async run({ personId, password }: InputOf<typeof resetPassword>, by: Person): Promise<object> {
    const passwordHash = await hashPassword(password);
    return this.once.run(by, { id: v7(), kind: 'password reset', subject: personId, request: { personId } }, async (tx, at) => {
      if (!(await tx.person.findFirst({ where: { id: personId }, select: { id: true } }))) throw new Problem('not-found');
      await setPassword(tx, by, { personId, passwordHash }, at);
      return {};
    });
  }
}
