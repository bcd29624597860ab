import type { Lot, ReplyOf, showReview as contract } from '@larderbook/contracts';
import { listDeviations } from '../deviations/deviations.queries';
import { weightsOfLot } from '../lots/lot-weights.queries';
import { withMissNow } from '../lots/misses-now';
import { showLot } from '../lots/show-lot';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { allergensBesideFormula } from './allergens-beside-formula';
import { findings, isReady, type Beside } from './findings';
import { isOnePersonShop, recordersOf, type Recorder } from './recorders.queries';

type Review = ReplyOf<typeof contract>;

/** Throws `not-found`. */
export async function showReview(tx: Tx, lotId: string, by: Person, now: Date): Promise<Review> {
  const lot = await showLot(tx, lotId, now);
  const found = findings(lot, await besideLot(tx, lot, by, now));

  const recorders = await recordersOf(tx, lotId);
  const alone = await isOnePersonShop(tx);
  const ready = isReady(found);
  const whyNot = whyNotSign(by, { ready, recorders, alone });
  return {
    lot,
    findings: found,
    ready,
    maySign: whyNot === undefined,
    whyNot,
    soleWorker: alone && isRecorder(by, recorders),
    recordedBy: recorders.map(({ name }) => name),
  };
}

/** Deviations are oldest first. */
export async function besideLot(tx: Tx, lot: Lot, { establishment }: Person, now: Date): Promise<Beside> {
  const deviations = await withMissNow(tx, await listDeviations(tx, { open: 'all', lotId: lot.lotId }), now);
  return {
    deviations: deviations.sort((a, b) => a.number - b.number),
    strange: await allergensBesideFormula(tx, lot),
    weights: await weightsOfLot(tx, lot.lotId),
    unit: establishment.units === 'US' ? 'lb' : 'kg',
  };
}

const isRecorder = (by: Person, recorders: Recorder[]): boolean => recorders.some(({ personId }) => personId === by.personId);

type Circumstances = { ready: boolean; recorders: Recorder[]; alone: boolean };

function whyNotSign(by: Person, { ready, recorders, alone }: Circumstances): Review['whyNot'] {
  if (!by.roles.includes('owner') && !by.roles.includes('reviewer')) return 'a-reviewer-signs';
  if (isRecorder(by, recorders) && !alone) return 'made-records-of-it';
  if (!ready) return 'still-missing-or-open';
  return undefined;
}
