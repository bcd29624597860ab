import type { listPackings, ReplyOf } from '@larderbook/contracts';

/** Packages of one packing run, how many are left, and whether they may ship. */
export type Packing = ReplyOf<typeof listPackings>['packings'][number];
