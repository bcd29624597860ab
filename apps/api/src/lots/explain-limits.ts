import type { Judged, PointExplained } from '@larderbook/contracts';
import {
  carriedBy,
  explainAttestation,
  explainByVerdict,
  explainConcentration,
  explainFigure,
  explainRange,
  explainSeriesLimit,
  explanationOf,
  type Brought,
  type ConcentrationLimit,
  scaleErrorOf,
  type Explanation,
  type InstrumentErrors,
  type MeatIn,
  type SayTime,
} from '@larderbook/haccp';
import { contextOf, type PointRecords } from './judge-control-point';
import type { PointOnLot } from './judge-points';
import { measurementOf, seriesAt } from './judge-reading';
import type { WentIn } from './what-went-in';

/** Each limit of a control point with how it was judged. */
export const explainLimits = ({ judged, records }: PointOnLot, say: SayTime): PointExplained['limits'] =>
  judged.map((one) => ({ limitId: one.limitId, ...explainOne(one, records, say) }));

function explainOne({ limit, verdict }: Judged, records: PointRecords, say: SayTime): Explanation {
  const { readings, wentIn } = records;
  switch (limit.kind) {
    case 'concentration':
      return explanationOf(limit, verdict, wentIn ? weighed(limit, verdict, wentIn, records.errors) : explainByVerdict(verdict));
    case 'range':
      return explanationOf(limit, verdict, explainRange(limit, readings.map(valueOf), records.errors));
    case 'figure':
      return explanationOf(limit, verdict, explainFigure(limit, readings.map(figureAt), records.errors));
    case 'attestation':
      return explanationOf(
        limit,
        verdict,
        limit.asks === 'humidity' ? explainByVerdict(verdict) : explainAttestation(limit, readings.map(answerOf)),
      );
    default:
      return explainSeriesLimit(limit, verdict, seriesAt(readings), contextOf(records), say);
  }
}

type Taken = PointRecords['readings'][number];

const valueOf = (taken: Taken) => ({
  id: taken.id,
  at: taken.takenAt.getTime(),
  probe: taken.probe,
  measurement: measurementOf(taken),
});

const figureAt = ({ id, takenAt, probe, value, unit }: Taken) => ({
  id,
  at: takenAt.getTime(),
  probe,
  read: value !== null && unit !== null ? { value, unit } : undefined,
});

const answerOf = ({ id, takenAt, answer, seen }: Taken) => ({
  id,
  at: takenAt.getTime(),
  answer: answer === null ? undefined : { holds: answer, seen },
});

/** Everything that brings the substance in, and the meat it is counted on, each by its name. */
function weighed(limit: ConcentrationLimit, verdict: Judged['verdict'], wentIn: WentIn, errors?: InstrumentErrors) {
  const { weighings, reworked, inputs, composition } = wentIn;
  const carried = reworked.map(
    (share): Brought => ({
      mass: carriedBy(share, limit.substance),
      percent: 100,
      name: `rework of ${share.code}`,
      error: scaleErrorOf(errors?.meat),
    }),
  );
  const brought = weighings
    .filter(({ substance }) => substance === limit.substance)
    .map(({ id, mass, percent, name }): Brought => ({ id, mass, percent: percent ?? NaN, name, error: scaleErrorOf(errors?.mass) }));
  const fresh = inputs.filter(({ source }) => !source).map(({ id, mass }, index): MeatIn => ({ id, mass, name: `Meat ${index + 1}` }));
  const inRework = composition.meat - fresh.reduce((sum, { mass }) => sum + mass, 0n);
  const meat = inRework > 0n ? [...fresh, { name: 'Meat in rework', mass: inRework }] : fresh;
  const named = [...carried.filter(({ mass }) => mass > 0n), ...brought];
  return explainConcentration(limit, verdict, named, meat, composition.meat);
}
