import { Injectable } from '@nestjs/common';
import { isOfSurroundings, type clarifyReadings, type InputOf, type Judged, type ReplyOf } from '@larderbook/contracts';
import { clocksDiffer } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { RecordOnce } from '../ledger/record-once';
import { keptJudged } from '../lots/kept-judged';
import { wordsFrom } from '../lots/clarifications.queries';
import { judgeControlPoint } from '../lots/judge-control-point';
import { wentInFor } from '../lots/judge-formulation';
import { openForMisses } from '../lots/open-for-misses';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { clockOf, lotAtPoint, type AtPoint } from './readings.queries';

type Input = InputOf<typeof clarifyReadings>;

/** The readings stay; their control point is judged again by what the person says, and a miss opens a deviation. */
@Injectable()
export class ClarifyReadings {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof clarifyReadings>> {
    const { clarificationId: id, lotId, controlPointId } = input;
    return this.once.run(by, { id, kind: 'clarification', subject: lotId, request: input, happenedAt: input.takenAt }, async (tx, at) => {
      const lot = await lotAtPoint(tx, lotId, controlPointId);
      await checkReadings(tx, input, lot);
      checkHasCome(input, lot, at);
      const reason = reasonOf(input);
      const judged = await judgeAgain(tx, input, lot, at);
      await keep(tx, { input, reason, judged }, by, at);

      const made = { lotId, subjectId: id, takenAt: new Date(input.takenAt) };
      const deviationId = await openForMisses(tx, made, [{ point: lot.point, judged }], by, at);
      const verdicts = judged.map(({ limitId, verdict }) => ({ limitId, verdict }));
      return { clarificationId: id, controlPointId, verdicts, deviationId };
    });
  }
}

function reasonOf({ reason }: Input): string {
  if (!reason) throw new Problem('reason-missing', told('say-how-you-know'));
  return reason;
}

/** A wrong single value is corrected instead. */
async function checkReadings(tx: Tx, { lotId, controlPointId, readingIds }: Input, { point, curve }: AtPoint) {
  const found = await tx.reading.findMany({
    where: { id: { in: readingIds }, lotId },
    select: { controlPointId: true },
  });
  if (found.length < readingIds.length) {
    throw new Problem('not-found', told('no-such-reading'));
  }
  if (found.some((reading) => reading.controlPointId !== controlPointId)) {
    throw new Problem('not-found', told('chosen-of-another-point'));
  }
  if (point.takenAs !== 'curve') {
    throw new Problem('wrong-kind-of-value', told('correct-it-instead', { point: point.name }));
  }
  const counting = new Map(curve.map((taken) => [taken.id, taken]));
  for (const readingId of readingIds) {
    const taken = counting.get(readingId);
    if (!taken) throw new Problem('already-amended', told('choose-its-correction'));
    if (isOfSurroundings(point, taken)) {
      throw new Problem('wrong-kind-of-value', told('judged-by-no-limit', { probe: taken.probe }));
    }
  }
}

/** A reading still to come cannot have been read at the right time. */
function checkHasCome({ word, readingIds }: Input, { curve }: AtPoint, now: Date): void {
  const isToCome = ({ id, takenAt }: AtPoint['curve'][number]) =>
    readingIds.includes(id) && takenAt.getTime() - now.getTime() > clocksDiffer;
  if (word !== 'time is right' || !curve.some(isToCome)) return;
  throw new Problem('in-the-future', told('chosen-still-to-come'));
}

async function judgeAgain(tx: Tx, input: Input, lot: AtPoint, now: Date): Promise<Judged[]> {
  const { point, piece, curve } = lot;
  const said = wordsFrom([input]);
  const readings = curve.map((taken) => (input.readingIds.includes(taken.id) ? { ...taken, word: said.get(taken.id) } : taken));
  const wentIn = await wentInFor(tx, input.lotId, point);
  return judgeControlPoint(point, { readings, wentIn, piece, ...clockOf(lot, now) }).judged;
}

type Said = { input: Input; reason: string; judged: Judged[] };

async function keep(tx: Tx, { input, reason, judged }: Said, by: Person, at: Date): Promise<void> {
  const { clarificationId: id, lotId, controlPointId, word, readingIds } = input;
  const entry = { id, lotId, controlPointId, word, reason, judged: keptJudged(judged), takenAt: new Date(input.takenAt) };
  await tx.clarification.create({ data: { ...keptBy(by, at), ...entry, station: by.station } });
  await tx.clarifiedReading.createMany({
    data: readingIds.map((readingId) => ({
      establishmentId: by.establishmentId,
      id: v7(),
      clarificationId: id,
      readingId,
    })),
  });
}
