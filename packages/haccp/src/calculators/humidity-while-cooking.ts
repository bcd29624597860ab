import { humidNeeded, judgeHumidity, type HumidityOption } from '../limit-sets/judge-humidity';
import { degrees, sayDegrees } from '../quantity/degrees';
import { sayDuration } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import type { CannotCalculate, Calculation } from './calculation';

const MINUTE = 60_000;

/** Minutes of cooking and of humidity in all, and what the core reached. */
export type HumidityWhileCooking = {
  option: HumidityOption;
  cooking: number;
  humid: number;
  endpoint: number;
  unit: TemperatureUnit;
};

/** Whether a cook was humid for long enough by one of the four options. */
export function humidityWhileCooking({ option, cooking, humid, endpoint, unit }: HumidityWhileCooking): Calculation | CannotCalculate {
  if (humid > cooking) {
    return { cannot: `Humid for ${humid} min in ${cooking} min of cooking cannot be: count the humid time within the cooking time.` };
  }
  const core = degrees(endpoint, unit);
  const cook = { cooking: Math.round(cooking * MINUTE), humid: Math.round(humid * MINUTE), endpoint: core };
  const verdict = judgeHumidity(option, cook);
  if (verdict.kind === 'undetermined') return { cannot: [verdict.because, verdict.next].join(' ') };
  const least = sayDuration(humidNeeded(option, cook.cooking));
  return {
    title: 'Humidity while cooking',
    given: [
      { what: 'Option', said: `${option}: ${verdict.limit}` },
      { what: 'Cooking time', said: sayDuration(cook.cooking) },
      { what: 'Humid in all', said: humid === 0 ? 'not at all' : sayDuration(cook.humid) },
      { what: 'Endpoint', said: sayDegrees(core) },
    ],
    steps: [{ what: 'Humid for at least', rule: RULE[option], putIn: `${RULE[option]}, of ${sayDuration(cook.cooking)}`, gives: least }],
    results: [{ what: 'Humid for at least', said: least, value: humidNeeded(option, cook.cooking) / MINUTE, unit: 'min' }],
    verdicts: [verdict],
    notes: [
      'The cooking time runs from the product’s going into the heated oven until the lethality is met. Bursts of steam add up.',
      'Humidity need not be addressed for product immersed in liquid, in a sealed moisture-proof bag or in a casing that ' +
        'holds moisture (natural, cellulose, collagen, fibrous, plastic); for pieces of 10 lb (4.5 kg) or more in an oven ' +
        'at 250 °F (121 °C) or more throughout; for cooking by direct heat (pp. 31-33).',
      'Humidity belongs before drying: product dried first is not covered.',
    ],
    sources: [verdict.source],
    cautions: [cautions.limits],
  };
}

const RULE: Record<HumidityOption, string> = {
  1: 'the longer of half the cooking time and 1 h',
  2: 'the longer of half the cooking time and 1 h',
  3: 'the longer of a quarter of the cooking time and 1 h',
  4: 'the whole cooking time',
};
