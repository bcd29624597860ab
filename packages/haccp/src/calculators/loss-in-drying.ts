import { forecastDrying } from '../kinds/weight-loss/forecast-drying';
import { inOrder, shareLost } from '../kinds/weight-loss/weighings';
import { coded, wordFor } from '../limits/coded';
import type { MassUnit } from '../quantity/mass';
import type { Quantity } from '../quantity/quantity';
import { massOf } from '../quantity/weigh';
import type { Calculation, Result } from './calculation';
import { cannot, type CannotCalculate, type Why } from './cannot';
import { cautions } from './cautions';
import { percent, typed } from './figures';

const DAY = 86_400_000;

/** Days since it was hung. */
export type TypedWeighing = { days: number; weight: number };

export type LossInDrying = { weighings: readonly TypedWeighing[]; unit: MassUnit; percent: number };

export function lossInDrying({ weighings, unit, percent: aimed }: LossInDrying): Calculation | CannotCalculate {
  const all = weighings.map(({ days, weight }) => ({ at: Math.round(days * DAY), mass: massOf({ value: weight, unit }) }));
  const drying = inOrder(all);
  if (!drying) return cannot('no-first-weight');
  const forecast = forecastDrying(all, aimed);
  if (forecast.state === 'undetermined') return { cannot: [forecast.because as Why] };
  const last = drying.later[drying.later.length - 1];
  const share = last ? shareLost(drying.start, last) * 100 : 0;
  const lost: Quantity = { value: share.toFixed(1), unit: '%' };
  const range: Result[] =
    'arrival' in forecast
      ? [
          { what: coded('most-likely'), is: dayOf(forecast.arrival.best) },
          { what: coded('at-the-earliest'), is: dayOf(forecast.arrival.earliest) },
          { what: coded('at-the-latest'), is: dayOf(forecast.arrival.latest) },
        ]
      : [];
  return {
    given: [
      { what: coded('loss-aimed-at'), is: percent(aimed) },
      ...weighings.map(({ days, weight }) => ({ what: coded('day', { day: String(days) }), is: typed({ value: weight, unit }) })),
    ],
    steps: [
      {
        what: coded('lost-so-far'),
        rule: coded('lost-so-far.rule'),
        putIn: coded('weighings', { count: weighings.length }),
        gives: lost,
      },
      { what: coded('when'), rule: coded('drying.rule'), putIn: wordFor('state', forecast.state), gives: forecast.because },
    ],
    results: [
      { what: coded('lost-so-far'), is: lost, value: share, unit: '%' },
      { what: coded('state'), is: wordFor('state', forecast.state) },
      ...range,
    ],
    judged: [],
    notes: [...(forecast.next ? [forecast.next] : []), coded('loss-no-proof')],
    sources: [],
    grounds: [coded('practice-drying')],
    cautions: [cautions.model],
  };
}

const dayOf = (instant: number | undefined): Result['is'] =>
  instant === undefined ? coded('not-as-it-goes') : coded('day', { day: String(Math.ceil(instant / DAY)) });
