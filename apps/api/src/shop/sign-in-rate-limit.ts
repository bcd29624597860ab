import { Injectable } from '@nestjs/common';
import { timeOf } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { Clock } from '../platform/clock';
import { Database } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

const minutes = 15;
/** Failures in the window before one has to wait. An address may be a whole shop. */
const most = { userName: 5, address: 30 };

type Try = { userName: string; ids: string[] };

/** A try counts before the password is checked, so that many at once cannot slip through. */
@Injectable()
export class SignInRateLimit {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  /** Throws `too-many-attempts`, and leaves this try uncounted. */
  async count(userName: string, address: string): Promise<Try> {
    const counted = [
      { id: v7(), userName, most: most.userName },
      { id: v7(), userName: `@${address}`, most: most.address }, // no user name begins with @
    ];
    const at = this.clock.now();
    const ids = counted.map(({ id }) => id);
    await this.tries.createMany({ data: counted.map(({ id, userName }) => ({ id, userName, at })) });
    for (const { userName, most } of counted) {
      if ((await this.tries.count({ where: { userName, at: { gt: this.windowStart() } } })) <= most) continue;
      await this.tries.deleteMany({ where: { id: { in: ids } } });
      throw new Problem('too-many-attempts', told('wait-after-tries', { count: String(most), time: timeOf(minutes * 60_000) }));
    }
    return { userName, ids };
  }

  /** After a right password, earlier mistakes no longer count against the person. */
  async forget({ userName, ids }: Try): Promise<void> {
    await this.tries.deleteMany({
      where: { OR: [{ id: { in: ids } }, { userName }, { at: { lte: this.windowStart() } }] },
    });
  }

  private get tries() {
    return this.db.door.signInAttempt;
  }

  private windowStart = (): Date => new Date(this.clock.now().getTime() - minutes * 60_000);
}
