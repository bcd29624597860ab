import type { Deviation } from '@larderbook/contracts';
import type { Tx } from '../platform/database';

/**
 * Deviations as the records of now tell their miss. Judging is done by a room after this one, which gives it to the
 * whole program.
 */
export abstract class MissShown {
  abstract show(tx: Tx, deviations: readonly Deviation[]): Promise<Deviation[]>;
}
