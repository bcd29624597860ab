import { Injectable } from '@nestjs/common';
import type { SignedIn } from '@larderbook/contracts';
import { Clock } from '../platform/clock';
import { Database } from '../platform/database';
import { Problem } from '../platform/problem';
import { SignInDoor } from './sign-in-door';
import { SignInRateLimit } from './sign-in-rate-limit';
import { signedIn } from './signed-in.queries';

export type Caller = { address: string; headers: Headers };
export type NewSession = { person: SignedIn; cookies: string[] };

@Injectable()
export class SignIn {
  constructor(
    private readonly door: SignInDoor,
    private readonly tries: SignInRateLimit,
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  async run(given: { userName: string; password: string }, caller: Caller): Promise<NewSession> {
    const counted = await this.tries.count(given.userName.trim().toLowerCase(), caller.address);
    const entered = await this.door.enter(counted.userName, given.password, caller.headers);
    if (!entered) throw new Problem('wrong-user-name-or-password');

    const person = await signedIn(this.db.door, entered.token, this.clock.now());
    if (!person) {
      await this.door.end(entered.token);
      throw new Problem('wrong-user-name-or-password'); // the password is right, but the person has left the shop
    }
    await this.tries.forget(counted);
    return { person, cookies: entered.cookies };
  }
}
