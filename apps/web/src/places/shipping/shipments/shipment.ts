import type { listShipments, ReplyOf } from '@larderbook/contracts';

export type Shipment = ReplyOf<typeof listShipments>['shipments'][number];
