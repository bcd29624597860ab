import * as contract from '@larderbook/contracts';
import { requestOf, type ControlPoint } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { products } from '../../../prisma/demo/products';
import type { BenchShop } from './bench-shop';

/** What a lot is read while it is cooked: as often as somebody would write it down. */
const coreTemperatures = products.sausage.cook.map(([, fahrenheit]) => fahrenheit);

export const readingsOfALot = coreTemperatures.length;

/** Lots of smoked sausage that are in the smokehouse. */
export async function startLots({ tell, world }: BenchShop, count: number): Promise<string[]> {
  const lotIds = Array.from({ length: count }, () => v7());
  for (const lotId of lotIds) {
    await tell(contract.startLot, { lotId, productId: world.products.sausage.productId, note: '', takenAt: new Date().toISOString() });
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
    for (const value of coreTemperatures) {
      yield httpRequest(url, shop, requestOf(contract.recordReading, {
        readingId: v7(), lotId, controlPointId, entered: { value, unit: '°F' }, probe: probes[0], instrumentId: shop.world.instruments.probe, takenAt: new Date().toISOString(),
      }));
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
