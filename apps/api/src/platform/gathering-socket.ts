import { Socket } from 'node:net';

/**
 * Sends all writes of one turn as one message: each message wakes PostgreSQL, and the driver writes one per statement.
 */
export class GatheringSocket extends Socket {
  override uncork(): void {
    process.nextTick(() => super.uncork());
  }
}
