import { Inject, Injectable } from '@nestjs/common';
import type { InputOf, setUpShop } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { SESSION_SECRET } from '../platform/session-secret';
import { foundEstablishment } from './found-establishment';
import { checkLotCodePattern } from './lot-code-pattern';
import { hashPassword } from './password-hash';
import { sealed } from './sealed';
import { SignIn, type Caller, type NewSession } from './sign-in';
import { firstRun } from './signed-in.queries';
import { checkWhereItWorks } from './where-it-works';

/** The new owner is signed in at once. */
@Injectable()
export class SetUpShop {
  constructor(
    private readonly once: RecordOnce,
    private readonly signIn: SignIn,
    @Inject(SESSION_SECRET) private readonly secret: string,
  ) {}

  async run(input: InputOf<typeof setUpShop>, station: string, caller: Caller): Promise<NewSession> {
    checkLotCodePattern(input.establishment.lotCodePattern, '#/establishment/lotCodePattern');
    checkWhereItWorks(input.establishment, '#/establishment');
    const { establishmentId, establishment: details, owner } = input;
    const by = { personId: owner.personId, establishmentId, station };
    const request = { ...input, owner: sealed(owner, this.secret) };
    const passwordHash = await hashPassword(owner.password);

    await this.once.run(by, { id: establishmentId, kind: 'establishment', request }, async (tx, at) => {
      await refuseSecondShop(tx);
      await foundEstablishment(tx, { establishmentId, demonstration: false, details, owner: { ...owner, passwordHash } }, at);
      return {};
    });
    return this.signIn.run(owner, caller);
  }
}

/** Of two set-ups at once, the second waits here and finds the first. */
async function refuseSecondShop(tx: Tx): Promise<void> {
  await tx.$queryRaw`SELECT 1 FROM pg_advisory_xact_lock(hashtextextended('first run', 0))`;
  if ((await firstRun(tx)).hasShop) throw new Problem('already-set-up');
}
