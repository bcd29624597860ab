import type { InputOf, recordShipment } from '@larderbook/contracts';
import { roundedMass } from '@larderbook/haccp';
import { weightsOfLots, type LotWeights } from '../lots/lot-weights.queries';
import { asideIn, leftIn } from '../lots/what-is-left';
import type { LotStands } from '../lots/where-a-lot-stands';
import type { Tx } from '../platform/database';
import { femtograms, massUnit } from '../platform/kept-weight';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { mayShip } from './may-ship';
import { leftOf } from './packings.queries';

type Lines = InputOf<typeof recordShipment>['lines'];
type Goods = Awaited<ReturnType<typeof packingsOf>>;

/**
 * Throws `not-found`, `not-cleared` with every such lot, or `more-than-there-is` with every short packing, pointing at
 * the lines.
 */
export async function checkGoods(tx: Tx, lines: Lines, stands: ReadonlyMap<string, LotStands>): Promise<void> {
  const goods = await packingsOf(tx, lines);
  const lotIds = [...new Set(goods.map(({ packing }) => packing.lotId))];
  const stock = await weightsOfLots(tx, lotIds);

  const uncleared = goods.flatMap(({ packing: { id, lotId, lot }, pointer }) => {
    const [stand, inPackages] = [stands.get(lotId), stock.get(lotId)];
    if (!stand || !inPackages) return [{ pointer, lotId, why: told('standing-unknown', { code: lot.code }) }];
    const { mayShip: may, because } = mayShip(stand, inPackages, id);
    return may ? [] : [{ pointer, lotId, why: told('lot-may-not-ship', { code: lot.code, because }) }];
  });
  if (uncleared.length > 0) {
    const lots = new Map(uncleared.map(({ lotId, why }) => [lotId, why]));
    const errors = uncleared.map(({ pointer, why }) => ({ pointer, ...why }));
    throw new Problem('not-cleared', [...lots.values()], errors);
  }

  await checkCounts(tx, goods);
  for (const [lotId, inPackages] of stock)
    checkAside(
      goods.filter(({ packing }) => packing.lotId === lotId),
      inPackages,
    );
}

async function packingsOf(tx: Tx, lines: Lines) {
  const found = await tx.packing.findMany({
    where: { id: { in: lines.map(({ packingId }) => packingId) } },
    select: { id: true, code: true, lotId: true, netGrams: true, netUnit: true, lot: { select: { code: true } } },
  });
  const packings = new Map(found.map((packing) => [packing.id, packing]));
  return lines.map(({ packingId, count }, index) => {
    const packing = packings.get(packingId);
    if (!packing) throw new Problem('not-found', told('line-names-no-packages', { line: String(index + 1) }));
    return { packing, count, pointer: `#/lines/${index}` };
  });
}

async function checkCounts(tx: Tx, goods: Goods): Promise<void> {
  const left = await leftOf(
    tx,
    goods.map(({ packing }) => packing.id),
  );
  const short = goods.filter(({ packing, count }) => count > (left.get(packing.id) ?? 0));
  if (short.length === 0) return;
  const errors = short.map(({ packing: { id, code }, count, pointer }) => ({
    pointer,
    ...told('packages-left', { count: left.get(id) ?? 0, code, asked: count }),
  }));
  throw new Problem('more-than-there-is', errors, errors);
}

/** A decision names a weight, so only the rest of the lot may leave. */
function checkAside(goods: Goods, stock: LotWeights): void {
  const asked = goods.reduce((sum, { count, packing }) => sum + femtograms(packing.netGrams) * BigInt(count), 0n);
  const [first] = goods;
  if (!first || asideIn(stock) === 0n || asked <= leftIn(stock)) return;
  const { lot, netUnit } = first.packing;
  const figure = (mass: bigint) => roundedMass(mass, massUnit(netUnit), 3, 'down');
  const { condemned, toRework } = stock.aside;
  const most = told('so-much-may-ship', { left: figure(leftIn(stock)), asked: figure(asked) });
  const details = [
    ...(condemned > 0n ? [told('condemned-in-packages', { condemned: figure(condemned), code: lot.code })] : []),
    ...(toRework > 0n ? [told('to-rework-in-packages', { toRework: figure(toRework), code: lot.code })] : []),
    most,
  ];
  throw new Problem(
    'more-than-there-is',
    details,
    goods.map(({ pointer }) => ({ pointer, ...most })),
  );
}
