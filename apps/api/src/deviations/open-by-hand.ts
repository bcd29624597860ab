import { Injectable } from '@nestjs/common';
import type { InputOf, openDeviation as contract } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Database, type Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { showDeviation } from './deviations.queries';
import { openDeviation } from './open-deviation';

/** Something unforeseen, or a control point that stays undetermined, puts the lot on hold. */
@Injectable()
export class OpenByHand {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof contract>, by: Person) {
    const { deviationId, lotId, controlPointId, substance, description, takenAt } = input;
    await this.once.run(by, { id: deviationId, kind: 'deviation', request: input, happenedAt: takenAt }, async (tx, at) => {
      await findLot(tx, lotId, controlPointId);
      await refuseKnown(tx, deviationId);
      const dedupeKey = `by-hand:${deviationId}`;
      await openDeviation(tx, { dedupeKey, deviationId, lotId, controlPointId, substance, description, takenAt }, by, at);
      return { deviationId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}

/** A device must not reuse the id of a deviation that a miss opened. */
async function refuseKnown(tx: Tx, id: string): Promise<void> {
  if (await tx.deviation.findFirst({ where: { id }, select: { id: true } })) throw new Problem('sent-differently');
}

async function findLot(tx: Tx, lotId: string, controlPointId: string | undefined): Promise<void> {
  const [lot] = await tx.$queryRaw<{ hasControlPoint: boolean }[]>`
    SELECT jsonb_path_exists(p.content, '$.controlPoints[*] ? (@.controlPointId == $asked)',
      jsonb_build_object('asked', ${controlPointId ?? null}::text)) AS "hasControlPoint"
    FROM lot l JOIN plan p ON p.id = l.plan_id WHERE l.id = ${lotId}::uuid`;
  if (!lot) throw new Problem('not-found');
  if (controlPointId && !lot.hasControlPoint) throw new Problem('no-such-control-point');
}
