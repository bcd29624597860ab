import type { Deviation } from '@larderbook/contracts';
import type { Tx } from '../platform/database';

/** Judging belongs to a later room, which provides this to the whole program. */
export abstract class MissShown {
  abstract show(tx: Tx, deviations: readonly Deviation[]): Promise<Deviation[]>;
}
