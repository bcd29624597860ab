import type { InputOf, voidRecord } from '@larderbook/contracts';
import { massFromGrams } from '@larderbook/haccp';
import { rowToCorrect } from '../ledger/row-to-correct';
import { weightsOfLot } from '../lots/lot-weights.queries';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

type Input = InputOf<typeof voidRecord>;

/**
 * The product is on hold again, even after the closing. What has left meanwhile is a possible recall. Only who may
 * decide may void.
 */
export async function voidDisposition(tx: Tx, input: Input, by: Person, at: Date): Promise<void> {
  const { voidId, amends, reason } = input;
  if (!by.roles.some((role) => role === 'owner' || role === 'reviewer')) throw new Problem('not-allowed', told('voided-by-a-reviewer'));
  const amending = await rowToCorrect(tx, 'disposition', input);
  await checkNotCarriedOut(tx, amends);
  await tx.$executeRaw`
    INSERT INTO disposition (establishment_id, id, lot_id, receipt_id, decision, weight_value, weight_unit, grams, reason,
      basis, recorded_at, recorded_by, amends_id, first_id, amend_reason, voided)
    SELECT establishment_id, ${voidId}::uuid, lot_id, receipt_id, decision, weight_value, weight_unit, grams, reason,
      basis, ${at}, ${by.personId}::uuid, id, ${amending?.firstId}::uuid, ${reason}, true
    FROM disposition WHERE id = ${amends}::uuid`;
}

/** A decision that was carried out stands until its destruction or rework is voided. */
export async function checkNotCarriedOut(tx: Tx, id: string): Promise<void> {
  const [made] = await tx.$queryRaw<{ decision: string; lotId: string | null; grams: string; destroyed: boolean }[]>`
    SELECT p.decision, p.lot_id AS "lotId", p.grams::text AS grams,
      EXISTS (SELECT FROM destruction_now x WHERE x.disposition_id = p.id) AS destroyed
    FROM disposition_now p WHERE p.id = ${id}::uuid`;
  if (made?.destroyed) throw new Problem('still-in-use', told('destruction-recorded'));
  if (made?.decision !== 'rework' || !made.lotId) return;
  const { aside } = await weightsOfLot(tx, made.lotId);
  if (aside.pending >= massFromGrams(made.grams)) return;
  throw new Problem('still-in-use', told('reworked-already'));
}

/** The product is held apart until its destruction is recorded again. */
export async function voidDestruction(tx: Tx, input: Input, by: Person, at: Date): Promise<void> {
  const { voidId, amends, reason } = input;
  const amending = await rowToCorrect(tx, 'destruction', input);
  await tx.$executeRaw`
    INSERT INTO destruction (establishment_id, id, disposition_id, method, taken_at, recorded_at, recorded_by, amends_id,
      first_id, amend_reason, voided)
    SELECT establishment_id, ${voidId}::uuid, disposition_id, method, taken_at, ${at}, ${by.personId}::uuid, id,
      ${amending?.firstId}::uuid, ${reason}, true
    FROM destruction WHERE id = ${amends}::uuid`;
}
