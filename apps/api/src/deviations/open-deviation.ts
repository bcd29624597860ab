import type { CriticalLimit, RestrictedSubstance, Verdict } from '@larderbook/haccp';
import { v7 } from 'uuid';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';

/** A miss, or something unforeseen. It belongs to a lot or to a delivery; `subjectId` is the row that was judged. */
export type Opening = {
  /** Unique in the establishment: one miss opens one deviation, however often it is seen. */
  dedupeKey: string;
  /** The device's own id, when a person opens it by hand. */
  deviationId?: string;
  lotId?: string;
  receiptId?: string;
  controlPointId?: string;
  limitId?: string;
  subjectId?: string;
  /** One sentence: what was missed, by how much. */
  description: string;
  /** The restricted substance it is about, where no control point judges it. */
  substance?: RestrictedSubstance;
  limit?: CriticalLimit;
  verdict?: Verdict;
  takenAt: Date | string;
};

/**
 * Opens a deviation inside the transaction that found it and returns its id; the same key again returns the first
 * one's. To be called under RecordOnce only: its writes follow one another, so the next number is free.
 */
export async function openDeviation(tx: Tx, opening: Opening, by: Person, at: Date): Promise<string> {
  const { dedupeKey, deviationId = v7(), ...about } = opening;
  const open = await tx.deviation.findFirst({ where: { dedupeKey }, select: { id: true } });
  if (open) return open.id;

  const { _max } = await tx.deviation.aggregate({ _max: { number: true } });
  await tx.deviation.create({
    data: {
      ...about,
      ...keptBy(by, at),
      id: deviationId,
      number: (_max.number ?? 0) + 1,
      dedupeKey,
      takenAt: new Date(about.takenAt),
    },
  });
  return deviationId;
}
