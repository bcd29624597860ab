import { Socket } from 'node:net';

/** The driver writes one message per statement, and each wakes PostgreSQL; this sends one per turn. */
export class GatheringSocket extends Socket {
  override uncork(): void {
    process.nextTick(() => super.uncork());
  }
}
