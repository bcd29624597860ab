import { Socket } from 'node:net';

/**
 * Sends what is written to it in one turn as one message. Each message is a call of the system that wakes PostgreSQL,
 * and the driver writes one for every statement.
 */
export class GatheringSocket extends Socket {
  override uncork(): void {
    process.nextTick(() => super.uncork());
  }
}
