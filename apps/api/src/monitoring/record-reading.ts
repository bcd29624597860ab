import { Injectable } from '@nestjs/common';
import { isOfKind, type CookSeen } from '@larderbook/haccp';
import {
  asksForHumidity,
  isOfSurroundings,
  recordsMoment,
  type Flag,
  type InputOf,
  type Judged,
  type recordReading,
  type ReplyOf,
} from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { refuseUnlessSure } from '../lots/ask-about-weight';
import { cookSeen } from '../lots/cook-seen';
import { readLots } from '../lots/lot-rows';
import { entryToAmend } from '../lots/entry-to-amend';
import { checkFlags, lastChecksOf, type ChecksOf } from '../lots/instrument-flags';
import { judgeControlPoint } from '../lots/judge-control-point';
import { judgedFor, wentInFor } from '../lots/judge-formulation';
import { judgeReading, type Taken } from '../lots/judge-reading';
import { entryFlags } from '../lots/lot-to-record-on';
import { openForMisses } from '../lots/open-for-misses';
import type { WentIn } from '../lots/what-went-in';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { askBeside } from './ask-beside';
import { askAbout, checkKind } from './check-entered';
import { keepReading } from './keep-reading';
import { judgeFollowers } from './judge-followers';
import { clockOf, lotAtPoint, rootOf, type AtPoint } from './readings.queries';

type Input = InputOf<typeof recordReading>;

/** A miss opens its deviation in the same transaction. */
@Injectable()
export class RecordReading {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof recordReading>> {
    const { readingId, lotId, controlPointId, instrumentId, amends, reason = '' } = input;
    return this.once.run(by, { id: readingId, kind: 'reading', subject: lotId, request: input }, async (tx, at) => {
      const [lot, lastCheck] = await Promise.all([
        lotAtPoint(tx, lotId, controlPointId),
        lastChecksOf(tx, instrumentId, new Date(input.takenAt)),
      ]);
      checkKind(lot.point, input.entered);
      await checkCorrected(tx, input);

      const others = lot.curve.filter(({ id }) => id !== amends);
      const corrected = lot.curve.find(({ id }) => id === amends);
      const taken = { ...takenFrom(input, lot), arrivedAt: corrected?.arrivedAt ?? at };
      const isUnusual = checkUsual(input, lot, taken, others);
      const wentIn = await wentInFor(tx, lotId, lot.point);
      const cook = asksForHumidity(lot.point) ? await cookOf(tx, lotId, lot.point) : undefined;
      const judged = judge(lot, others, taken, { now: at, wentIn, cook });
      const flags = flagsOf(input, { lot, lastCheck, others, taken, at, isUnusual });
      const place = { lotId, controlPointId, planId: lot.planId, instrumentId };
      const said = { judged, flags, amendsId: amends, reason, station: by.station };
      await keepReading(tx, { ...keptBy(by, at), ...taken, ...place, ...said });

      const made = { lotId, subjectId: readingId, takenAt: taken.takenAt };
      const dedupeKeyOf = await dedupeKeysOf(tx, input, lot);
      const missed = await openForMisses(tx, made, [{ point: lot.point, judged }], by, at, dedupeKeyOf);
      const followers = recordsMoment(lot.point) ? await judgeFollowers(tx, lotId, controlPointId, at) : [];
      const deviationId = (await openForMisses(tx, made, followers, by, at)) ?? missed;
      const verdicts = judged.map(({ limitId, verdict }) => ({ limitId, verdict }));
      return { readingId, controlPointId, verdicts, flags, deviationId };
    });
  }
}

/** Asks once about an unlikely value and keeps the answer with the reading. */
function checkUsual({ entered, sure }: Input, { point, piece }: AtPoint, taken: Taken, others: Taken[]): boolean {
  const question = askAbout(usualFor(point, taken.probe), entered) ?? askBeside({ point, piece }, taken, others);
  return refuseUnlessSure(question, sure);
}

/** The plausible range is that of the core, not of the air around it. */
const usualFor = (point: AtPoint['point'], probe: string): AtPoint['point'] =>
  isOfSurroundings(point, { probe }) ? { ...point, plausible: undefined } : point;

async function checkCorrected(tx: Tx, input: Input): Promise<void> {
  const select = { lotId: true, controlPointId: true, voided: true };
  const corrected = await entryToAmend(input, (where) => tx.reading.findFirst({ where, select }));
  if (corrected && corrected.controlPointId !== input.controlPointId) {
    throw new Problem('not-found', told('of-another-point'));
  }
}

/** A plan with one probe needs no name for it. */
function takenFrom({ readingId, entered, probe, takenAt }: Input, { point: { probes } }: AtPoint): Taken {
  const only = probes.length === 1 ? probes[0] : undefined;
  const common = { id: readingId, probe: probe || (only ?? ''), takenAt: new Date(takenAt) };
  if ('answer' in entered)
    return { ...common, value: null, unit: null, answer: entered.answer, seen: entered.seen, humidity: entered.humidity };
  return { ...common, value: entered.value, unit: entered.unit, answer: null, seen: '' };
}

async function cookOf(tx: Tx, lotId: string, point: AtPoint['point']): Promise<CookSeen | undefined> {
  const [rows] = await readLots(tx, [lotId]);
  return rows && cookSeen(point, rows);
}

type Known = { now: Date; wentIn: WentIn | undefined; cook: CookSeen | undefined };

/** A reading of a curve is judged with the whole curve; one of the surroundings, not at all. */
function judge(lot: AtPoint, others: Taken[], taken: Taken, { now, wentIn, cook }: Known): Judged[] {
  const { point, piece } = lot;
  if (isOfSurroundings(point, taken)) return [];
  if (point.takenAs !== 'curve') return judgedFor(judgeReading(point, { ...taken, keptAt: now }, cook), wentIn);
  const readings = [...others, taken].sort((a, b) => a.takenAt.getTime() - b.takenAt.getTime());
  return judgeControlPoint(point, { readings, wentIn, piece, ...clockOf(lot, now) }).judged;
}

type Circumstances = {
  lot: AtPoint;
  lastCheck: ChecksOf | undefined;
  others: Taken[];
  taken: Taken;
  at: Date;
  isUnusual: boolean;
};

function flagsOf({ instrumentId, amends }: Input, about: Circumstances): Flag[] {
  const { lot, lastCheck, others, taken, at, isUnusual } = about;
  const { takenAt, probe, value } = taken;
  const last = lot.point.takenAs === 'curve' ? others.findLast((other) => other.probe === probe)?.takenAt : lot.lastTakenAt;
  const lastTakenAt = amends ? undefined : last;
  const isMeasured = (value !== null && !isAnalysed(lot.point)) || instrumentId !== undefined;
  return [
    ...entryFlags({ lot, takenAt, recordedAt: at, lastTakenAt }),
    ...(isMeasured ? checkFlags(instrumentId, lastCheck, takenAt) : []),
    ...(isUnusual ? (['unusual-value'] as const) : []),
  ];
}

/** A laboratory's letter gives these figures, so no instrument of the shop is needed. */
const isAnalysed = ({ limits }: AtPoint['point']): boolean => limits.every(({ limit }) => isOfKind(limit, 'figure'));

/** A single reading shares a key with its corrections; a curve has one for the lot. */
async function dedupeKeysOf(tx: Tx, { readingId, amends }: Input, { point }: AtPoint) {
  if (point.takenAs === 'curve') return undefined;
  const first = amends ? await rootOf(tx, amends) : readingId;
  return (_point: unknown, limitId: string) => `reading:${first}:${limitId}`;
}
