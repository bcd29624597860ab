import { byPgbench, hasPgbench } from '../baseline/pgbench';
import { byPgClient } from '../baseline/pg-client';
import { readingParameters } from '../baseline/reading-parameters';
import { openShops, type BenchShop } from '../larder/bench-shop';
import type { Larder } from '../larder/open-larder';
import { readingRequests, readingsOfALot, startLots } from '../larder/reading-requests';
import { Line } from '../load/line';
import { asFastAsAnswered, asManyASecond, type Client, type Load } from '../load/load';
import { latencyOf } from '../load/percentile';
import type { Figure, Measured } from '../report/figure';

const seconds = 4;
const steadyRate = 200;
/** More than can be answered in the time: nobody runs out of meat to measure. */
const readingsPerSecond = 1_500;

const cases = [
  { clients: 1, shops: 1 },
  { clients: 8, shops: 1 },
  { clients: 8, shops: 4 },
  { clients: 8, shops: 4, perSecond: steadyRate },
];
type Case = { clients: number; shops: number; perSecond?: number };

/**
 * One reading of a core temperature recorded: the person known, the request validated, the curve judged, the line of the
 * ledger written, all of it on disk before the answer.
 */
export async function oneReading(larder: Larder): Promise<Measured> {
  const shops = await openShops(larder, 4);
  await load(larder, shops, { clients: 8, shops: 4 }, 2); // until the program is warm
  const baseline = (await hasPgbench()) ? { by: byPgbench, what: 'bare SQL, pgbench' } : { by: byPgClient, what: 'bare SQL, pg' };
  const parameters = await readingParameters(larder, shops);

  const figures: Figure[] = [];
  for (const each of cases) {
    const ours = await load(larder, shops, each, seconds);
    const bare = await baseline.by(larder.database.apiUrl, parameters.slice(0, each.shops), each.clients, seconds, each.perSecond);
    figures.push(figureOf(each, ours, bare, baseline.what));
  }
  return { title: 'One reading recorded through HTTP: signed in, validated, judged, in the ledger, on disk', figures };
}

function figureOf({ clients, shops, perSecond }: Case, ours: Load, bare: Load, what: string): Figure {
  const who = `${clients} ${clients === 1 ? 'client' : 'clients'}, ${shops} ${shops === 1 ? 'establishment' : 'establishments'}`;
  const latency = latencyOf(ours.took);
  if (!perSecond) return { what: who, value: ours.perSecond, unit: '/s', beside: { what, value: bare.perSecond }, latency };
  return { what: `${perSecond} a second, p99`, value: latency.p99, unit: 'ms', beside: { what, value: latencyOf(bare.took).p99 }, latency };
}

async function load(larder: Larder, shops: BenchShop[], { clients, shops: taking, perSecond }: Case, duration: number): Promise<Load> {
  const lots = Math.ceil((duration * (perSecond ?? readingsPerSecond)) / clients / readingsOfALot) + 1;
  const all = await Promise.all(shops.slice(0, taking).map((shop) => clientsOf(larder, shop, clients / taking, lots)));
  const ready = all.flat();
  const senders = ready.map(({ client }) => client);
  const done = await (perSecond ? asManyASecond(perSecond, senders, duration) : asFastAsAnswered(senders, duration));
  for (const { line } of ready) line.hangUp();
  return done;
}

/** So many people of one shop, each with lots of their own. */
async function clientsOf({ url }: Larder, shop: BenchShop, count: number, lots: number): Promise<{ line: Line; client: Client }[]> {
  const lotIds = await startLots(shop, lots * count);
  return Promise.all(
    Array.from({ length: count }, async (_, index) => {
      const line = await Line.to(url);
      const requests = readingRequests(url, shop, lotIds.slice(index * lots, (index + 1) * lots));
      const client: Client = () => {
        const { value } = requests.next();
        return value ? line.send(value) : undefined;
      };
      return { line, client };
    }),
  );
}
