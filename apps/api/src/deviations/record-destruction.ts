import { Injectable } from '@nestjs/common';
import type { InputOf, recordDestruction, ReplyOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { isDestroyed } from './dispositions.queries';

/** How and when condemned product was destroyed. Until then it is held apart. */
@Injectable()
export class RecordDestruction {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof recordDestruction>, by: Person): Promise<ReplyOf<typeof recordDestruction>> {
    const { destructionId, dispositionId, method } = input;
    const takenAt = new Date(input.takenAt);
    const sent = { id: destructionId, kind: 'destruction', subject: dispositionId, request: input, happenedAt: input.takenAt };
    return this.once.run(by, sent, async (tx, at) => {
      await checkCondemned(tx, dispositionId);
      await tx.destruction.create({ data: { ...keptBy(by, at), id: destructionId, dispositionId, method, takenAt } });
      return { destructionId };
    });
  }
}

/** Throws `not-found`, `not-condemned` and `destroyed-already`. */
async function checkCondemned(tx: Tx, id: string): Promise<void> {
  const [found] = await tx.$queryRaw<{ decision: string; isDestroyed: boolean }[]>`
    SELECT p.decision, EXISTS (SELECT FROM destruction_now x WHERE x.disposition_id = p.id) AS "isDestroyed"
    FROM disposition_now p WHERE p.id = ${id}::uuid`;
  if (!found) throw new Problem('not-found', { detail: 'There is no such decision in this shop.' });
  if (!isDestroyed(found.decision)) throw new Problem('not-condemned');
  if (found.isDestroyed) throw new Problem('destroyed-already');
}
