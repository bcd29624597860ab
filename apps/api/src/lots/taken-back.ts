import { isOfSurroundings, type ControlPoint } from '@larderbook/contracts';
import type { DealtWith } from '../deviations/deviations-behind';
import { cookSeen } from './cook-seen';
import { judgedFor } from './judge-formulation';
import type { PointOnLot } from './judge-points';
import { judgeReading } from './judge-reading';
import type { LotRows } from './lot-rows';
import type { RecordSince } from './records-since-review.queries';

/** `reason` is given only by a person. */
export type TakenBack = { what: string; personId: string; at: Date; reason?: string };
export type ReviewStands = { reviewId: string; takenBack?: TakenBack };

/**
 * Oldest first. Only a miss, a doubt, a correction or an addition to what was reviewed takes the clearance back. A
 * check that goes on, as of a cold store, does not.
 */
export function reviewsStand(rows: LotRows, points: readonly PointOnLot[]): ReviewStands[] {
  const reviews = rows.since.filter(({ kind }) => kind === 'review');
  return reviews.map((review, index) => {
    const until = reviews[index + 1]?.seq;
    const after = rows.since.filter(({ seq }) => seq > review.seq && (until === undefined || seq < until));
    const own = new Set(after.filter(({ kind }) => kind === 'reading' || kind === 'packing').map(({ id }) => id));
    const recorded = after.find((one) => takesBack(one, own, review, rows, points));
    const opened = rows.deviations
      .filter(({ openedSeq }) => openedSeq === null || (openedSeq > review.seq && (until === undefined || openedSeq < until)))
      .map(({ number, openedAt, openedBy, openedSeq }) => ({
        seq: openedSeq ?? review.seq,
        said: { what: `Deviation ${number} was opened`, personId: openedBy, at: openedAt },
      }))[0];
    const found = [opened, recorded && { seq: recorded.seq, said: tell(recorded, rows) }, dealtWithSince(rows, review.seq, until)];
    const [first] = found.filter((one) => one !== undefined).sort((a, b) => Number(a.seq - b.seq));
    return { reviewId: review.id, takenBack: first?.said };
  });
}

/** The review had seen the deviation as dealt with otherwise. */
function dealtWithSince({ deviations }: LotRows, from: bigint, until: bigint | undefined) {
  const since = deviations.flatMap(({ number, dealtWith }) =>
    dealtWith.map(({ seq, at, personId, what }) => ({
      seq: BigInt(seq),
      said: { what: sayDealtWith(what, number), personId, at: new Date(at) },
    })),
  );
  return since.find(({ seq }) => seq > from && (until === undefined || seq < until));
}

const settling: Record<string, string> = { decision: 'Decision on', action: 'Corrective action of', closing: 'Closing of' };

/** "Decision on deviation 4 voided" */
function sayDealtWith(what: DealtWith, number: number): string {
  const [kind = '', ...did] = what.split(' ');
  return `${settling[kind]} deviation ${number} ${did.join(' ')}`;
}

function takesBack(one: RecordSince, own: ReadonlySet<string>, review: RecordSince, rows: LotRows, points: readonly PointOnLot[]): boolean {
  if (one.kind === 'review') return false;
  if (one.kind === 'packing') return one.amendsId !== null && !own.has(one.amendsId);
  if (one.kind !== 'reading') return true;
  if (one.amendsId && !own.has(one.amendsId)) return true;
  const found = points.find(({ point }) => point.controlPointId === one.controlPointId);
  const reading = rows.readings.find(({ id }) => id === one.id);
  if (!found || !reading) return true;
  if (reading.voided || isOfSurroundings(found.point, reading)) return false;
  return isSingle(found.point)
    ? judgedFor(judgeReading(found.point, reading, cookSeen(found.point, rows)), rows.wentIn).some(({ verdict }) => verdict.kind !== 'met')
    : found.stands !== 'met' || reading.takenAt <= review.at;
}

const isSingle = ({ takenAs }: ControlPoint): boolean => takenAs === 'value' || takenAs === 'attestation';

function tell({ kind, amendsId, controlPointId, code, id, personId, at }: RecordSince, rows: LotRows): TakenBack {
  if (kind === 'taking back') return { what: 'Taken back', reason: code ?? '', personId, at };
  const name = rows.content.controlPoints.find((point) => point.controlPointId === controlPointId)?.name ?? '';
  const words: Record<RecordSince['kind'], string> = {
    review: '',
    reading: `reading at ${name}`,
    'stage end': `end of ${name}`,
    clarification: `word on readings at ${name}`,
    weighing: 'weighing',
    input: 'input',
    packing: `packing ${code ?? ''}`,
    removal: code ?? '',
    delivery: `delivery ${code ?? ''}`,
    calibration: `check of ${code ?? ''}`,
    'taking back': '',
  };
  const isVoid = rows.readings.find((reading) => reading.id === id)?.voided;
  const did = amendsId ? (isVoid ? 'voided' : 'corrected') : kind === 'calibration' ? 'failed' : 'recorded';
  return { what: `${words[kind].charAt(0).toUpperCase()}${words[kind].slice(1)} ${did}`, personId, at };
}
