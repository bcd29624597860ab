import { Injectable } from '@nestjs/common';
import type { changePassword, InputOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { hashPassword, isPassword } from './password-hash';
import { setPassword } from './set-password';
import { SignInRateLimit } from './sign-in-rate-limit';

/** This session stays; every other one of the person ends. */
@Injectable()
export class ChangePassword {
  constructor(
    private readonly once: RecordOnce,
    private readonly tries: SignInRateLimit,
    private readonly db: Database,
  ) {}

  async run({ current, next }: InputOf<typeof changePassword>, by: Person, session: { token: string; address: string }): Promise<object> {
    const counted = await this.tries.count(by.userName, session.address);
    const account = await this.db.door.signInAccount.findFirst({
      where: { userId: by.personId, providerId: 'credential' },
      select: { password: true },
    });
    if (!account?.password || !(await isPassword(current, account.password))) {
      throw new Problem('wrong-user-name-or-password', told('password-not-right'));
    }
    await this.tries.forget(counted);

    const passwordHash = await hashPassword(next);
    return this.once.run(by, { id: v7(), kind: 'password change', subject: by.personId, request: {} }, async (tx, at) => {
      await setPassword(tx, by, { personId: by.personId, passwordHash }, at, session.token);
      return {};
    });
  }
}
