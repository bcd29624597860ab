import { isOfSurroundings, type ControlPoint } from '@larderbook/contracts';
import type { Coded } from '@larderbook/haccp';
import type { DealtWith } from '../deviations/deviations-behind';
import { ended, sentence } from '../platform/account';
import { cookSeen } from './cook-seen';
import { judgedFor } from './judge-formulation';
import type { PointOnLot } from './judge-points';
import { judgeReading } from './judge-reading';
import type { LotRows } from './lot-rows';
import type { RecordSince } from './records-since-review.queries';
import { removedAs } from './removed-as';

/** `reason` is given only by a person. */
type TakenBack = { what: Coded; personId: string; at: Date; reason?: string };
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
        said: { what: sentence('since-deviation', { number: String(number) }), personId: openedBy, at: openedAt },
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
      said: { what: dealtWithBy(what, String(number)), personId, at: new Date(at) },
    })),
  );
  return since.find(({ seq }) => seq > from && (until === undefined || seq < until));
}

function dealtWithBy(what: DealtWith, number: string): Coded {
  switch (what) {
    case 'closing taken back':
      return sentence('since-closing', { number });
    case 'action corrected':
    case 'action voided':
      return sentence('since-action', { number, did: what.slice('action '.length) });
    default:
      return sentence('since-decision', { number, did: what.slice('decision '.length) });
  }
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

function tell(one: RecordSince, rows: LotRows): TakenBack {
  const { kind, code, personId, at } = one;
  if (kind === 'taking back')
    return { what: sentence('review-taken-back', { reason: ended(code ?? '') }), reason: code ?? '', personId, at };
  return { what: recordedBy(one, rows), personId, at };
}

function recordedBy({ kind, amendsId, controlPointId, code, id }: RecordSince, rows: LotRows): Coded {
  const point = rows.content.controlPoints.find((each) => each.controlPointId === controlPointId)?.name ?? '';
  const did = amendsId ? 'corrected' : 'recorded';
  switch (kind) {
    case 'reading':
      return sentence('since-reading', {
        point,
        did: amendsId && rows.readings.find((reading) => reading.id === id)?.voided ? 'voided' : did,
      });
    case 'stage end':
      return sentence('since-stage-end', { point, did });
    case 'clarification':
      return sentence('since-clarification', { point });
    case 'packing':
      return sentence('since-packing', { code: code ?? '', did });
    case 'removal':
      return sentence('since-removal', { removed: removedAs(code ?? ''), did });
    case 'delivery':
      return sentence('since-delivery', { code: code ?? '', did });
    case 'calibration':
      return sentence('since-check', { instrument: code ?? '', did: amendsId ? did : 'failed' });
    case 'weighing':
      return sentence('since-weighing', { did });
    default:
      return sentence('since-input', { did });
  }
}
