import { asGiven, isNegligible, roundedMass, massOf, type EnteredMass } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { receiptLeft } from '../receiving/receipt-left';
import { atLeastZero, looseIn, weightsOfLot, reworkableIn } from './lot-weights.queries';

/** Throws `not-found` and `receipt-refused`. */
export async function usableReceipt(tx: Tx, receiptId: string) {
  const found = await receiptLeft(tx, receiptId);
  if (found.row.decision === 'refused') {
    throw new Problem('receipt-refused', told('delivery-was-refused', { code: found.row.code }));
  }
  return found;
}

/** Throws `not-found`, and `into-itself` when the source contains the lot. */
export async function usableLot(tx: Tx, sourceLotId: string, into: { id: string; code: string }) {
  const source = await tx.lot.findFirst({ where: { id: sourceLotId }, select: { code: true } });
  if (!source) throw new Problem('not-found', told('no-such-earlier-lot'));
  if (await isPartOf(tx, into.id, sourceLotId)) {
    const { code } = into;
    const isItself = sourceLotId === into.id;
    throw new Problem(
      'into-itself',
      isItself ? told('is-the-lot-itself', { code }) : told('contains-it-already', { source: source.code, code }),
    );
  }
  return { code: source.code, left: reworkableIn(await weightsOfLot(tx, sourceLotId)) };
}

/** `left` is in femtograms. Throws `more-than-there-is`. */
export function checkEnough(asked: EnteredMass, left: bigint, code: string): void {
  if (massOf(asked) <= left) return;
  const there = roundedMass(left > 0n ? left : 0n, asked.unit, 3, 'down');
  throw new Problem('more-than-there-is', told('so-much-left', { left: there, code, asked: asGiven(asked.value, asked.unit) }));
}

/**
 * With less, a hold would end over undecided product. Throws `still-in-use`.
 * @param within what scales may disagree about: a hundredth of the lot for a corrected weight, nothing for a voided one
 */
export async function checkStillThere(tx: Tx, lotId: string, less: bigint, unit: string, within: 'a hundredth' | 'nothing'): Promise<void> {
  const weights = await weightsOfLot(tx, lotId);
  const loose = atLeastZero(looseIn(weights));
  if (less <= loose || (within === 'a hundredth' && isNegligible(less - loose, weights.wentIn))) return;
  const left = roundedMass(loose, unit === 'kg' || unit === 'g' ? 'kg' : 'lb', 3, 'down');
  throw new Problem('still-in-use', told('only-so-much-loose', { left }));
}

async function isPartOf(tx: Tx, lotId: string, whole: string): Promise<boolean> {
  const [found] = await tx.$queryRaw<{ isPart: boolean }[]>`
    WITH RECURSIVE behind(id) AS (
      SELECT ${whole}::uuid
      UNION
      SELECT i.source_lot_id FROM behind b JOIN lot_input_now i ON i.lot_id = b.id WHERE i.source_lot_id IS NOT NULL
    )
    SELECT EXISTS (SELECT FROM behind WHERE id = ${lotId}::uuid) AS "isPart"`;
  return found?.isPart === true;
}
