import type { ReplyOf, showReview as contract } from '@larderbook/contracts';
import { listDeviations } from '../deviations/deviations.queries';
import { withMissNow } from '../lots/misses-now';
import { showLot } from '../lots/show-lot';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { allergensBesideFormula } from './allergens-beside-formula';
import { findings, isReady } from './findings';
import { isOnePersonShop, recordersOf, type Recorder } from './recorders.queries';

type Review = ReplyOf<typeof contract>;

/** What the review of a lot finds, and whether this person may sign it. Throws `not-found`. */
export async function showReview(tx: Tx, lotId: string, by: Person, now: Date): Promise<Review> {
  const lot = await showLot(tx, lotId, now);
  const deviations = await withMissNow(tx, await listDeviations(tx, { open: 'all', lotId }), now);
  const found = findings(
    lot,
    deviations.sort((a, b) => a.number - b.number),
    await allergensBesideFormula(tx, lot),
  );

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

export const isRecorder = (by: Person, recorders: Recorder[]): boolean =>
  recorders.some(({ personId }) => personId === by.personId);

type Circumstances = { ready: boolean; recorders: Recorder[]; alone: boolean };

function whyNotSign(by: Person, { ready, recorders, alone }: Circumstances): string | undefined {
  if (!by.roles.includes('owner') && !by.roles.includes('reviewer'))
    return 'The review is signed by a reviewer or the owner.';
  if (isRecorder(by, recorders) && !alone)
    return 'You made records of this lot. Somebody who made none of them signs its review.';
  if (!ready) return 'Something is still missing or open.';
  return undefined;
}
