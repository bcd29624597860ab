import { Injectable } from '@nestjs/common';
import type { Flag, InputOf, Judged, recordReading, ReplyOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { entryToAmend } from '../lots/entry-to-amend';
import { instrumentFlags } from '../lots/instrument-flags';
import { judgeControlPoint } from '../lots/judge-control-point';
import { judgeReading, type Taken } from '../lots/judge-reading';
import { entryFlags } from '../lots/lot-to-record-on';
import { causeOnLot, openForMisses } from '../lots/open-for-misses';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { askAbout, checkKind } from './check-entered';
import { lotAtPoint, readingsAt, rootOf, type AtPoint } from './readings.queries';

type Input = InputOf<typeof recordReading>;

/** One reading at a control point of a lot: kept as entered, judged at once, and what it misses opens its deviation with it. */
@Injectable()
export class RecordReading {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof recordReading>> {
    const { readingId, lotId, controlPointId, instrumentId } = input;
    return this.once.run(by, { id: readingId, kind: 'reading', subject: lotId, request: input }, async (tx, at) => {
      const lot = await lotAtPoint(tx, lotId, controlPointId);
      const question = checkValue(input, lot);
      await readingToAmend(tx, input);

      const taken = takenFrom(input, lot);
      const others = (await readingsAt(tx, lotId, controlPointId)).filter(({ id }) => id !== input.amends);
      const judged = judge(lot, others, taken, at);
      const flags = await flagsOf(tx, input, { lot, others, taken, at, isUnusual: question !== undefined });
      await tx.reading.create({
        data: {
          ...taken, establishmentId: by.establishmentId, lotId, controlPointId, planId: lot.planId, instrumentId, judged,
          amendsId: input.amends, reason: input.reason ?? '', flags, station: by.station, recordedAt: at, recordedBy: by.personId,
        },
      });
      const causeOf = await causesOf(tx, input, lot);
      const row = { lotId, point: lot.point, judged, causeOf, subjectId: readingId, takenAt: taken.takenAt };
      const deviationId = await openForMisses(tx, row, by, at);
      return { readingId, controlPointId, verdicts: judged.map(({ limitId, verdict }) => ({ limitId, verdict })), flags, deviationId };
    });
  }
}

/** Asks about what cannot well be, once; the answer is kept with the reading. */
function checkValue({ entered, sure }: Input, { point }: AtPoint): string | undefined {
  checkKind(point, entered);
  const question = askAbout(point, entered);
  if (question && !sure) throw new Problem('implausible-value', { detail: question });
  return question;
}

async function readingToAmend(tx: Tx, input: Input): Promise<void> {
  const columns = { lotId: true, controlPointId: true };
  const corrected = await entryToAmend(input, (where) => tx.reading.findFirst({ where, select: columns }));
  if (corrected && corrected.controlPointId !== input.controlPointId) {
    throw new Problem('not-found', { detail: 'The reading to correct is of another control point.' });
  }
}

/** Where the plan knows only one probe, that is the one. */
function takenFrom({ readingId, entered, probe, takenAt }: Input, { point }: AtPoint): Taken {
  const [only, ...others] = point.probes;
  const common = { id: readingId, probe: probe || (others.length === 0 ? (only ?? '') : ''), takenAt: new Date(takenAt) };
  if ('answer' in entered) return { ...common, value: null, unit: null, answer: entered.answer, seen: entered.seen };
  return { ...common, value: entered.value, unit: entered.unit, answer: null, seen: '' };
}

/** A reading of a curve is judged with all the others, as the whole curve stands with it. */
function judge({ point, endedAt, startAt }: AtPoint, others: Taken[], taken: Taken, now: Date): Judged[] {
  if (point.takenAs !== 'curve') return judgeReading(point, taken);
  const readings = [...others, taken].sort((a, b) => a.takenAt.getTime() - b.takenAt.getTime());
  return judgeControlPoint(point, { readings, endedAt: endedAt ?? undefined, startAt: startAt ?? undefined, now }).judged;
}

type Circumstances = { lot: AtPoint; others: Taken[]; taken: Taken; at: Date; isUnusual: boolean };

async function flagsOf(tx: Tx, { instrumentId, amends }: Input, { lot, others, taken, at, isUnusual }: Circumstances): Promise<Flag[]> {
  const { takenAt, probe, value } = taken;
  const lastTakenAt = amends ? undefined : others.findLast((other) => other.probe === probe)?.takenAt;
  return [
    ...entryFlags({ lot, takenAt, recordedAt: at, lastTakenAt }),
    ...(value === null && !instrumentId ? [] : await instrumentFlags(tx, instrumentId, takenAt)),
    ...(isUnusual ? (['unusual-value'] as const) : []),
  ];
}

async function causesOf(tx: Tx, { readingId, lotId, controlPointId, amends }: Input, { point }: AtPoint): Promise<(limitId: string) => string> {
  if (point.takenAs === 'curve') return causeOnLot(lotId, controlPointId);
  const first = amends ? await rootOf(tx, amends) : readingId;
  return (limitId) => `reading:${first}:${limitId}`;
}
