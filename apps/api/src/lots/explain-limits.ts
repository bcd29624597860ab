import type { PointExplained } from '@larderbook/contracts';
import {
  carriedBy,
  explainLimit,
  scaleErrorOf,
  type Brought,
  type InstrumentErrors,
  type MeatIn,
  type Recorded,
  type RecordedAlone,
  type RestrictedSubstance,
  type Weighed,
} from '@larderbook/haccp';
import { contextOf, type PointRecords } from './judge-control-point';
import type { PointOnLot } from './judge-points';
import { asRead, seriesAt } from './judge-reading';
import { reworkOf, type WentIn } from './what-went-in';

export function explainLimits({ judged, records }: PointOnLot): PointExplained['limits'] {
  const recorded = recordedAt(records);
  return judged.map(({ limitId, limit, verdict }) => ({ limitId, limit, ...explainLimit(limit, verdict, recorded) }));
}

function recordedAt(records: PointRecords): Recorded {
  const { readings, wentIn, errors } = records;
  return {
    alone: readings.map(aloneOf),
    series: seriesAt(readings),
    context: contextOf(records),
    errors,
    weighed: wentIn && ((substance) => weighedOf(substance, wentIn, errors)),
  };
}

const aloneOf = (taken: PointRecords['readings'][number]): RecordedAlone => ({
  id: taken.id,
  at: taken.takenAt.getTime(),
  probe: taken.probe,
  ...asRead(taken),
});

/** Includes what rework carries, and the meat in it. */
function weighedOf(substance: RestrictedSubstance, wentIn: WentIn, errors?: InstrumentErrors): Weighed {
  const { weighings, reworked, inputs, composition } = wentIn;
  const carried = reworked.map(
    (share): Brought => ({
      mass: carriedBy(share, substance),
      percent: 100,
      name: reworkOf(share.code),
      error: scaleErrorOf(errors?.meat),
    }),
  );
  const brought = weighings
    .filter((weighing) => weighing.substance === substance)
    .map(({ id, mass, percent, name }): Brought => ({ id, mass, percent: percent ?? NaN, name, error: scaleErrorOf(errors?.mass) }));
  const fresh = inputs
    .filter(({ source }) => !source)
    .map(({ id, mass }, index): MeatIn => ({ id, mass, name: { code: 'meat-of-delivery', figures: { number: index + 1 } } }));
  const inRework = composition.meat - fresh.reduce((sum, { mass }) => sum + mass, 0n);
  const meat = inRework > 0n ? [...fresh, { name: { code: 'meat-in-rework' }, mass: inRework }] : fresh;
  return { brought: [...carried.filter(({ mass }) => mass > 0n), ...brought], meat, meatBlock: composition.meat };
}
