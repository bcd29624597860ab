import { clockStart, startsAt, type ClarificationWord, type ControlPoint } from '@larderbook/contracts';
import type { Piece } from '@larderbook/haccp';
import type { PointRecords } from '../lots/judge-control-point';
import type { Taken } from '../lots/judge-reading';
import { readingsThatCount } from '../lots/lot-rows';
import { pieceAt } from '../lots/piece-at';
import { arrivalsOf } from '../lots/reading-roots';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

export type AtPoint = {
  planId: string;
  takenAt: Date;
  hasShipped: boolean;
  point: ControlPoint;
  /** Only of a curve: the piece whose core is read. */
  piece?: Piece;
  endedAt: Date | null;
  /** End of the stage before, or the moment recorded there; and when chilling began. */
  starts: Pick<PointRecords, 'startAt' | 'chillingBegan'>;
  lastTakenAt: Date | null;
  /** Uncorrected readings of a curve, or answers, oldest first. Empty for single values. */
  curve: Taken[];
};

type Row = Omit<AtPoint, 'point' | 'piece' | 'curve' | 'starts'> & {
  point: ControlPoint | null;
  productId: string;
  readings: Said[];
  /** `beforeThat` is the control point that `before` follows. */
  before: ControlPoint | null;
  beforeThat: ControlPoint | null;
  /** Ends of the two, and the yes answers at the first. */
  ends: { controlPointId: string; takenAt: string }[];
  answers: { takenAt: string; recordedAt: string }[];
};
type Said = Omit<Taken, 'takenAt' | 'arrivedAt' | 'word'> & {
  takenAt: string;
  recordedAt: string;
  amendsId: string | null;
  voided: boolean | null;
  word: ClarificationWord | null;
};

/** Throws `not-found` and `no-such-control-point`. */
export async function lotAtPoint(tx: Tx, lotId: string, controlPointId: string): Promise<AtPoint> {
  const [found] = await tx.$queryRaw<Row[]>`
    SELECT l.plan_id AS "planId", l.product_id AS "productId", l.taken_at AS "takenAt", c.point,
      own.taken_at AS "endedAt",
      before.point AS before, before_that.point AS "beforeThat",
      coalesce((SELECT json_agg(json_build_object('controlPointId', e.control_point_id, 'takenAt', e.taken_at)) FROM stage_end_now e
        WHERE e.lot_id = l.id AND e.control_point_id IN ((c.point ->> 'follows')::uuid, (before.point ->> 'follows')::uuid)), '[]') AS ends,
      coalesce((SELECT json_agg(json_build_object('takenAt', r.taken_at, 'recordedAt', r.recorded_at)) FROM reading_now r
        WHERE r.lot_id = l.id AND r.control_point_id = (c.point ->> 'follows')::uuid AND r.answer), '[]') AS answers,
      (SELECT max(r.taken_at) FROM reading r
        WHERE r.lot_id = l.id AND r.control_point_id = ${controlPointId}::uuid) AS "lastTakenAt",
      EXISTS (SELECT FROM packing_now p JOIN shipment_line_now s ON s.packing_id = p.id WHERE p.lot_id = l.id) AS "hasShipped",
      coalesce(curve.readings, '[]') AS readings
    FROM lot l JOIN plan n ON n.id = l.plan_id
    LEFT JOIN LATERAL (SELECT point FROM jsonb_array_elements(n.content -> 'controlPoints') point
      WHERE point ->> 'controlPointId' = ${controlPointId}) c ON true
    LEFT JOIN stage_end_now own ON own.lot_id = l.id AND own.control_point_id = ${controlPointId}::uuid
    LEFT JOIN LATERAL (SELECT p.point FROM jsonb_array_elements(n.content -> 'controlPoints') p(point)
      WHERE p.point ->> 'controlPointId' = c.point ->> 'follows') before ON true
    LEFT JOIN LATERAL (SELECT p.point FROM jsonb_array_elements(n.content -> 'controlPoints') p(point)
      WHERE p.point ->> 'controlPointId' = before.point ->> 'follows') before_that ON true
    LEFT JOIN LATERAL (
      SELECT json_agg(json_build_object('id', r.id, 'probe', r.probe, 'takenAt', r.taken_at, 'value', r.value,
        'unit', r.unit, 'answer', r.answer, 'seen', r.seen, 'humidity', r.humidity, 'amendsId', r.amends_id, 'voided', r.voided,
        'recordedAt', r.recorded_at, 'word', said.word)
        ORDER BY r.taken_at, r.seq, r.id) AS readings
      FROM reading r
      LEFT JOIN (
        SELECT DISTINCT ON (x.reading_id) x.reading_id, s.word FROM clarification s
        JOIN clarified_reading x ON x.clarification_id = s.id
        WHERE s.lot_id = ${lotId}::uuid AND s.control_point_id = ${controlPointId}::uuid
        ORDER BY x.reading_id, s.seq DESC
      ) said ON said.reading_id = r.id
      WHERE r.lot_id = l.id AND r.control_point_id = ${controlPointId}::uuid
    ) curve ON c.point ->> 'takenAs' IN ('curve', 'attestation')
    WHERE l.id = ${lotId}::uuid`;
  if (!found) throw new Problem('not-found', told('no-such-lot'));
  const { point, productId, readings, before, beforeThat, ends, answers, ...lot } = found;
  if (!point) throw new Problem('no-such-control-point');
  const piece = point.takenAs === 'curve' ? await pieceAt(tx, point, productId) : undefined;
  return { ...lot, point, piece, starts: startsOf(point, { before, beforeThat, ends, answers }), curve: asTaken(readings) };
}

type Before = Pick<Row, 'before' | 'beforeThat' | 'ends' | 'answers'>;

function startsOf(point: ControlPoint, { before, beforeThat, ends, answers }: Before): AtPoint['starts'] {
  const clock = clockStart(
    point,
    [before, beforeThat].filter((one) => one !== null),
  );
  const end = ends.find(({ controlPointId }) => controlPointId === clock.stage?.controlPointId);
  const moments = answers.map(({ takenAt, recordedAt }) => ({ at: Date.parse(takenAt), arrivedAt: Date.parse(recordedAt) }));
  const { startAt, chillingBegan } = startsAt(clock, end && Date.parse(end.takenAt), moments);
  return { startAt: startAt === undefined ? undefined : new Date(startAt), chillingBegan };
}

export const clockOf = ({ endedAt, starts }: AtPoint, now: Date): Pick<PointRecords, 'endedAt' | 'startAt' | 'chillingBegan' | 'now'> => ({
  endedAt: endedAt ?? undefined,
  ...starts,
  now,
});

function asTaken(readings: Said[]): Taken[] {
  const arrivals = arrivalsOf(readings);
  return readingsThatCount(readings).map(({ amendsId: _, voided: __, recordedAt, takenAt, word, ...taken }) => ({
    ...taken,
    takenAt: new Date(takenAt),
    arrivedAt: new Date(arrivals.get(taken.id) ?? recordedAt),
    word: word === 'as recorded' ? undefined : (word ?? undefined),
  }));
}

export async function rootOf(tx: Tx, readingId: string): Promise<string> {
  const [root] = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE chain(id, amends_id) AS (
      SELECT id, amends_id FROM reading WHERE id = ${readingId}::uuid
      UNION
      SELECT r.id, r.amends_id FROM chain c JOIN reading r ON r.id = c.amends_id
    )
    SELECT id FROM chain WHERE amends_id IS NULL`;
  return root?.id ?? readingId;
}
