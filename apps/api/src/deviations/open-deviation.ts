import type { CriticalLimit, RestrictedSubstance, Verdict } from '@larderbook/haccp';
import { v7 } from 'uuid';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import { keepVerdict } from '../platform/kept-verdict';
import type { Person } from '../platform/person';

/** `subjectId` is the row that was judged. */
type Opening = {
  /** Unique in the establishment: one miss opens one deviation, however often it is seen. */
  dedupeKey: string;
  /** The device's id, when a person opens it by hand. */
  deviationId?: string;
  lotId?: string;
  receiptId?: string;
  controlPointId?: string;
  limitId?: string;
  subjectId?: string;
  /** Of one opened by hand; the verdict of a miss tells the rest. */
  description?: string;
  /** Named where no control point judges the substance. */
  substance?: RestrictedSubstance;
  limit?: CriticalLimit;
  verdict?: Verdict;
  takenAt: Date | string;
};

/**
 * The same key returns the first deviation. Only RecordOnce may call it: its writes run one after the other, so the
 * next number is free.
 */
export async function openDeviation(tx: Tx, opening: Opening, by: Person, at: Date): Promise<string> {
  const { dedupeKey, deviationId = v7(), ...about } = opening;
  const open = await tx.deviation.findFirst({ where: { dedupeKey }, select: { id: true } });
  if (open) return open.id;

  const { _max } = await tx.deviation.aggregate({ _max: { number: true } });
  await tx.deviation.create({
    data: {
      ...about,
      verdict: about.verdict && keepVerdict(about.verdict),
      ...keptBy(by, at),
      id: deviationId,
      number: (_max.number ?? 0) + 1,
      dedupeKey,
      takenAt: new Date(about.takenAt),
    },
  });
  return deviationId;
}
