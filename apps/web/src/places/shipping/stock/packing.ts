import type { listPackings, ReplyOf } from '@larderbook/contracts';

export type Packing = ReplyOf<typeof listPackings>['packings'][number];
