import type { InputOf, voidRecord } from '@larderbook/contracts';
import { rowToCorrect } from '../ledger/row-to-correct';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

type Input = InputOf<typeof voidRecord>;

/** A closed deviation keeps at least one corrective action (9 CFR 417.3). */
export async function voidAction(tx: Tx, input: Input, by: Person, at: Date): Promise<void> {
  const { voidId, amends, reason } = input;
  const amending = await rowToCorrect(tx, 'corrective_action', input);
  await checkNotTheLast(tx, amends);
  await tx.$executeRaw`
    INSERT INTO corrective_action (establishment_id, id, deviation_id, form, parts, taken_at, recorded_at, recorded_by,
      amends_id, first_id, amend_reason, voided)
    SELECT establishment_id, ${voidId}::uuid, deviation_id, form, parts, taken_at, ${at}, ${by.personId}::uuid, id,
      ${amending?.firstId}::uuid, ${reason}, true
    FROM corrective_action WHERE id = ${amends}::uuid`;
}

async function checkNotTheLast(tx: Tx, id: string): Promise<void> {
  const [closed] = await tx.$queryRaw<{ number: number }[]>`
    SELECT d.number FROM corrective_action c JOIN deviation d ON d.id = c.deviation_id
    WHERE c.id = ${id}::uuid AND EXISTS (SELECT FROM deviation_closing_now k WHERE k.deviation_id = d.id)
      AND NOT EXISTS (SELECT FROM corrective_action_now o WHERE o.deviation_id = d.id AND o.id <> c.id)`;
  if (!closed) return;
  throw new Problem('still-in-use', told('closed-with-it', { number: String(closed.number) }));
}
