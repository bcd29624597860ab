import { showTrace } from '@larderbook/contracts';
import { connected } from '../../../apps/api/src/platform/connected';
import { traceSql } from '../baseline/trace-sql';
import { aWholeLot } from '../larder/a-whole-lot';
import { openShops, type BenchShop } from '../larder/bench-shop';
import type { Larder } from '../larder/open-larder';
import { reworkedLots, reworkLinks } from '../larder/reworked-lots';
import type { Figure, Measured } from '../report/figure';
import { medianTimeOf } from '../report/median-time';

/** Both ways from a lot, with names, quantities and the balance, through HTTP; beside the recursive SQL of one way. */
export async function aTrace(larder: Larder): Promise<Measured> {
  const [shop] = await openShops(larder, 1);
  if (!shop) throw new Error('No shop was opened');
  const { lotId } = await aWholeLot(shop);
  const reworked = await reworkedLots(larder, shop, lotId);
  return {
    title: 'A trace, answered through HTTP',
    figures: [
      await figureOf('of a usual lot', larder, shop, lotId, 15),
      await figureOf(`of rework, about ${reworkLinks.toLocaleString('en')} links`, larder, shop, reworked, 5),
    ],
  };
}

async function figureOf(what: string, larder: Larder, shop: BenchShop, lotId: string, rounds: number): Promise<Figure> {
  const value = await medianTimeOf(rounds, () => shop.tell(showTrace, { nodeId: lotId }));
  const bare = await connected(larder.database.apiUrl, async (client) => {
    await client.query(`SELECT set_config('larderbook.establishment', $1, false)`, [shop.establishmentId]);
    return medianTimeOf(rounds, () => client.query({ name: 'trace', text: traceSql, values: [lotId] }));
  });
  return { what, value, unit: 'ms', beside: { what: 'the recursive SQL alone', value: bare } };
}
