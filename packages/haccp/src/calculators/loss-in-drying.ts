import { forecastDrying } from '../kinds/weight-loss/forecast-drying';
import { inOrder, shareLost } from '../kinds/weight-loss/weighings';
import type { MassUnit } from '../quantity/mass';
import { sayPercent } from '../quantity/percent';
import { massOf } from '../quantity/weigh';
import { cautions } from './cautions';
import { commonPractice, type CannotCalculate, type Result, type Calculation } from './calculation';

const DAY = 86_400_000;

/** A piece on the scale, days after it was hung. */
export type TypedWeighing = { days: number; weight: number };

export type LossInDrying = { weighings: readonly TypedWeighing[]; unit: MassUnit; percent: number };

/** How much weight was lost, and when the loss aimed at will be there: an honest range, or too early to tell. */
export function lossInDrying({ weighings, unit, percent }: LossInDrying): Calculation | CannotCalculate {
  const all = weighings.map(({ days, weight }) => ({ at: Math.round(days * DAY), mass: massOf({ value: weight, unit }) }));
  const drying = inOrder(all);
  if (!drying) return { cannot: 'There is no weight to begin with: weigh the piece when it is hung.' };
  const forecast = forecastDrying(all, percent);
  if (forecast.state === 'undetermined') return { cannot: forecast.because };
  const last = drying.later[drying.later.length - 1];
  const lost = last ? shareLost(drying.start, last) * 100 : 0;
  const range: Result[] =
    'arrival' in forecast
      ? [
          { what: 'Most likely', said: dayOf(forecast.arrival.best) },
          { what: 'At the earliest', said: dayOf(forecast.arrival.earliest) },
          { what: 'At the latest', said: dayOf(forecast.arrival.latest) },
        ]
      : [];
  return {
    title: 'Loss of weight in drying',
    given: [
      { what: 'Loss aimed at', said: sayPercent(percent) },
      ...weighings.map(({ days, weight }) => ({ what: `Day ${days}`, said: `${weight} ${unit}` })),
    ],
    steps: [
      {
        what: 'Lost so far',
        rule: '(first weight − last weight) ÷ first weight',
        putIn: `${weighings.length} weighings`,
        gives: `${lost.toFixed(1)} %`,
      },
      { what: 'When', rule: 'loss = final × (1 − e^(−days ÷ τ)), fitted to the weighings', putIn: forecast.state, gives: forecast.because },
    ],
    results: [
      { what: 'Lost so far', said: `${lost.toFixed(1)} %`, value: lost, unit: '%' },
      { what: 'State', said: forecast.state },
      ...range,
    ],
    verdicts: [],
    notes: [
      ...(forecast.next ? [forecast.next] : []),
      'A loss of weight is no proof of safety: water activity and pH decide how a product keeps.',
    ],
    sources: [commonPractice('The law of drying')],
    cautions: [cautions.model],
  };
}

const dayOf = (instant: number | undefined): string => (instant === undefined ? 'not as it goes now' : `day ${Math.ceil(instant / DAY)}`);
