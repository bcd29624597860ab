import type { Flag } from '@larderbook/contracts';
import { flagTimes } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { planById } from '../products/plan-in-force';

/** Throws `not-found`. */
export async function lotToRecordOn(tx: Tx, lotId: string) {
  const lot = await tx.lot.findFirst({
    where: { id: lotId },
    select: {
      id: true,
      code: true,
      takenAt: true,
      planId: true,
      formulaId: true,
      packings: { where: { shipmentLines: { some: {} } }, select: { id: true }, take: 1 },
    },
  });
  const plan = lot && (await planById(tx, lot.planId));
  if (!lot || !plan) throw new Problem('not-found', told('no-such-lot'));
  const { packings, ...rest } = lot;
  return { ...rest, controlPoints: plan.content.controlPoints, hasShipped: packings.length > 0 };
}

type Entry = {
  lot: { takenAt: Date; hasShipped: boolean };
  takenAt: Date;
  recordedAt: Date;
  /** Of earlier entries in the series; left out for a correction. */
  lastTakenAt?: Date | null;
};

export const entryFlags = ({ lot, takenAt, recordedAt, lastTakenAt }: Entry): Flag[] => [
  ...flagTimes({
    takenAt: takenAt.getTime(),
    recordedAt: recordedAt.getTime(),
    lotStartedAt: lot.takenAt.getTime(),
    lastTakenAt: lastTakenAt?.getTime(),
  }),
  ...(lot.hasShipped ? (['lot-shipped-already'] as const) : []),
];
