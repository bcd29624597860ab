import type { InputOf, recordShipment } from '@larderbook/contracts';
import { sayMass } from '@larderbook/haccp';
import { lotsHold, type LotHolds } from '../lots/lot-holds.queries';
import type { LotStands } from '../lots/where-a-lot-stands';
import type { Tx } from '../platform/database';
import { femtograms, massUnit } from '../platform/kept-weight';
import { Problem } from '../platform/problem';
import { asideIn, leftIn, mayShip } from './may-ship';
import { leftOf } from './packings.queries';

type Lines = InputOf<typeof recordShipment>['lines'];
type Goods = Awaited<ReturnType<typeof packingsOf>>;

/**
 * Whether a whole load may leave. Throws `not-found`, `not-cleared` naming every lot that may not ship and why, or
 * `more-than-there-is` naming every packing that is short; both point at the lines they are about.
 */
export async function checkGoods(tx: Tx, lines: Lines, stands: ReadonlyMap<string, LotStands>): Promise<void> {
  const goods = await packingsOf(tx, lines);
  const lotIds = [...new Set(goods.map(({ packing }) => packing.lotId))];
  const stock = await lotsHold(tx, lotIds);

  const uncleared = goods.flatMap(({ packing: { id, lotId, lot }, pointer }) => {
    const [stand, inPackages] = [stands.get(lotId), stock.get(lotId)];
    const verdict = stand && inPackages ? mayShip(stand, inPackages, id) : { mayShip: false, because: 'It is not known where it stands.' };
    return verdict.mayShip ? [] : [{ pointer, detail: `Lot ${lot.code}: ${verdict.because}` }];
  });
  if (uncleared.length > 0) {
    const lots = new Set(uncleared.map(({ detail }) => detail));
    throw new Problem('not-cleared', { detail: [...lots].join(' '), errors: uncleared });
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
    if (!packing) throw new Problem('not-found', { detail: `Line ${index + 1} names packages that are not in this shop.` });
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
  const errors = short.map(({ packing, count, pointer }) => ({
    pointer,
    detail: `${sayPackages(left.get(packing.id) ?? 0)} left of ${packing.code}, ${count} were asked for.`,
  }));
  throw new Problem('more-than-there-is', {
    detail: errors.map(({ detail }) => detail).join(' '),
    errors,
    figures: Object.fromEntries(short.map(({ packing }) => [packing.code, left.get(packing.id) ?? 0])),
  });
}

const sayPackages = (count: number): string => (count === 1 ? '1 package is' : `${count} packages are`);

/** A decision names a weight, not packages: of a lot partly condemned or to be reworked, only the rest may leave. */
function checkAside(goods: Goods, stock: LotHolds): void {
  const asked = goods.reduce((sum, { count, packing }) => sum + femtograms(packing.netGrams) * BigInt(count), 0n);
  const [first] = goods;
  if (!first || asideIn(stock) === 0n || asked <= leftIn(stock)) return;
  const say = (mass: bigint) => sayMass(mass, massUnit(first.packing.netUnit), 3, 'down');
  const figures = {
    asked: say(asked),
    left: say(leftIn(stock)),
    condemned: say(stock.aside.condemned),
    toRework: say(stock.aside.toRework),
  };
  const { condemned, toRework } = stock.aside;
  const aside = [
    ...(condemned > 0n ? [`${figures.condemned} were condemned in their packages`] : []),
    ...(toRework > 0n ? [`${figures.toRework} are to be reworked`] : []),
  ];
  const detail = `Of lot ${first.packing.lot.code} ${aside.join(' and ')}: ` + `${figures.left} may ship, ${figures.asked} were asked for.`;
  throw new Problem('more-than-there-is', {
    detail,
    errors: goods.map(({ pointer }) => ({ pointer, detail })),
    figures,
  });
}
