import * as contract from '@larderbook/contracts';
import { requestOf, type ControlPoint } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { products } from '../../../prisma/demo/products';
import type { BenchShop } from './bench-shop';

/** What a lot is read while it is cooked, by the minute: as often as somebody would write it down, as fast as meat warms. */
const { cook } = products.sausage;
const minute = 60_000;
const cookMinutes = Math.max(...cook.map(([at]) => at));

export const readingsOfALot = cook.length;

/** So long ago that a whole cook lies between then and now. */
const before = (minutes: number): string => new Date(Date.now() - minutes * minute).toISOString();

/** Lots of smoked sausage that are in the smokehouse. */
export async function startLots({ tell, world }: BenchShop, count: number): Promise<string[]> {
  const lotIds = Array.from({ length: count }, () => v7());
  for (const lotId of lotIds) {
    await tell(contract.startLot, { lotId, productId: world.products.sausage.productId, note: '', takenAt: before(cookMinutes + 10) });
  }
  return lotIds;
}

/** The control point at which the core is read while it is cooked. */
export function cookPoint({ world }: BenchShop): ControlPoint {
  const point = world.products.sausage.plan.controlPoints.find(({ limits }) => limits.some(({ limit }) => limit.kind === 'dwell'));
  if (!point) throw new Error('The plan of the sausage has no cook');
  return point;
}

/** One client's requests, ready to be sent: the cook of one lot after the other, reading by reading. */
export function* readingRequests(url: string, shop: BenchShop, lotIds: readonly string[]): Generator<string> {
  const { controlPointId, probes } = cookPoint(shop);
  for (const lotId of lotIds) {
    for (const [at, value] of cook) {
      yield httpRequest(
        url,
        shop,
        requestOf(contract.recordReading, {
          readingId: v7(),
          lotId,
          controlPointId,
          entered: { value, unit: '°F' },
          probe: probes[0],
          instrumentId: shop.world.instruments.probe,
          takenAt: before(cookMinutes - at),
        }),
      );
    }
  }
}

function httpRequest(url: string, { cookie }: BenchShop, { method, path, body }: contract.ApiRequest): string {
  const content = Buffer.from(JSON.stringify(body)).toString('latin1');
  return [
    `${method} /api/v1${path} HTTP/1.1`,
    `host: ${new URL(url).host}`,
    `cookie: ${cookie}`,
    'x-larderbook: 1',
    'x-station: tablet%20by%20the%20smoker',
    'content-type: application/json',
    `content-length: ${content.length}`,
    '',
    content,
  ].join('\r\n');
}
