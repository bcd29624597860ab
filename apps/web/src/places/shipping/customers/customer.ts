import type { listCustomers, ReplyOf } from '@larderbook/contracts';

export type Customer = ReplyOf<typeof listCustomers>['customers'][number];
