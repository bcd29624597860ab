import type { listItems, listSuppliers, ReplyOf } from '@larderbook/contracts';

export type Item = ReplyOf<typeof listItems>['items'][number];
export type Supplier = ReplyOf<typeof listSuppliers>['suppliers'][number];
