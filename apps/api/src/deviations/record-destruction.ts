import { Injectable } from '@nestjs/common';
import type { InputOf, recordDestruction, ReplyOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect } from '../ledger/row-to-correct';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { isDestroyed } from './dispositions.queries';

/** Condemned product is held apart until this is recorded. */
@Injectable()
export class RecordDestruction {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof recordDestruction>, by: Person): Promise<ReplyOf<typeof recordDestruction>> {
    const { destructionId: id, dispositionId, method } = input;
    const takenAt = new Date(input.takenAt);
    const sent = { id, kind: 'destruction', subject: dispositionId, request: input, happenedAt: input.takenAt };
    return this.once.run(by, sent, async (tx, at) => {
      const amending = await destructionToCorrect(tx, input);
      await checkCondemned(tx, dispositionId, amending !== undefined);
      await tx.destruction.create({ data: { ...keptBy(by, at), id, dispositionId, method, takenAt, ...amending } });
      return { destructionId: id };
    });
  }
}

async function destructionToCorrect(tx: Tx, { dispositionId, amends, reason }: InputOf<typeof recordDestruction>) {
  if (amends && !(await tx.destruction.findFirst({ where: { id: amends, dispositionId }, select: { id: true } })))
    throw new Problem('not-found', told('no-destruction-to-correct'));
  return rowToCorrect(tx, 'destruction', { amends, reason });
}

/** Throws `not-found`, `not-condemned` and, unless its record is corrected, `destroyed-already`. */
async function checkCondemned(tx: Tx, id: string, isCorrection: boolean): Promise<void> {
  const [found] = await tx.$queryRaw<{ decision: string; isDestroyed: boolean }[]>`
    SELECT p.decision, EXISTS (SELECT FROM destruction_now x WHERE x.disposition_id = p.id) AS "isDestroyed"
    FROM disposition_now p WHERE p.id = ${id}::uuid`;
  if (!found) throw new Problem('not-found', told('no-such-decision'));
  if (!isDestroyed(found.decision)) throw new Problem('not-condemned');
  if (found.isDestroyed && !isCorrection) throw new Problem('destroyed-already');
}
