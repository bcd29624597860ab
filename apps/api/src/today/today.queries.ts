import type { ReplyOf, showToday as contract, Standing } from '@larderbook/contracts';
import { listDeviations } from '../deviations/deviations.queries';
import { dispositionsFor } from '../deviations/dispositions.queries';
import { withMissNow } from '../lots/misses-now';
import { headsOf, lotsStillHere } from '../lots/lots.queries';
import { listInstruments } from '../monitoring/instruments.queries';
import { listProducts } from '../products/products.queries';
import { personNames } from '../shop/person-names';
import type { Tx } from '../platform/database';

type Today = ReplyOf<typeof contract>;

export async function showToday(tx: Tx, now: Date): Promise<Today> {
  const deviations = await withMissNow(tx, await listDeviations(tx, { open: 'only' }), now);
  const lots = await headsOf(tx, await lotsStillHere(tx), now);
  const standing = (where: Standing) => lots.filter((lot) => lot.standing === where);
  return {
    at: now.toISOString(),
    recalls: deviations.filter(({ shippedAlready }) => shippedAlready),
    openDeviations: deviations.filter(({ shippedAlready }) => !shippedAlready),
    toDestroy: await dispositionsFor(tx, { toDestroy: true }, await personNames(tx)),
    inWork: mostUrgentFirst(standing('in-work')),
    onHold: mostUrgentFirst(standing('on-hold')),
    toReview: standing('to-review'),
    cleared: standing('cleared'),
    overdueInstruments: (await listInstruments(tx, now)).filter(({ overdue }) => overdue),
    plansMissing: await plansMissing(tx),
  };
}

/** First what will be too late unless somebody acts, then the earliest deadline. */
const mostUrgentFirst = (lots: Today['inWork']): Today['inWork'] =>
  [...lots].sort((a, b) => WARNED.indexOf(stateOf(a)) - WARNED.indexOf(stateOf(b)) || dueOf(a) - dueOf(b));
const WARNED = ['will miss', 'at risk', undefined];
const stateOf = ({ warning }: Today['inWork'][number]) => warning?.forecast.state;
const dueOf = ({ running }: Today['inWork'][number]): number => running?.deadline ?? Number.MAX_SAFE_INTEGER;

async function plansMissing(tx: Tx): Promise<Today['plansMissing']> {
  return (await listProducts(tx)).flatMap(({ productId, name, formulaVersion, planInForce }): Today['plansMissing'] => {
    const lacks = lackOf(formulaVersion !== undefined, planInForce !== undefined);
    return lacks ? [{ productId, name, lacks }] : [];
  });
}

function lackOf(hasFormula: boolean, hasPlan: boolean): Today['plansMissing'][number]['lacks'] | undefined {
  if (hasFormula) return hasPlan ? undefined : 'plan';
  return hasPlan ? 'formula' : 'formula-and-plan';
}
