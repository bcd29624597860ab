import { humiditySource, humidNeeded, judgeHumidity, type HumidityOption } from '../limit-sets/judge-humidity';
import { coded } from '../limits/coded';
import { degrees } from '../quantity/degrees';
import { asGiven, degreesOf, timeOf } from '../quantity/quantities';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation } from './calculation';
import { cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';

const MINUTE = 60_000;

/** `cooking` and `humid` in minutes; `endpoint` of the core. */
export type HumidityWhileCooking = {
  option: HumidityOption;
  cooking: number;
  humid: number;
  endpoint: number;
  unit: TemperatureUnit;
};

export function humidityWhileCooking({ option, cooking, humid, endpoint, unit }: HumidityWhileCooking): Calculation | CannotCalculate {
  const [cooked, wet] = [Math.round(cooking * MINUTE), Math.round(humid * MINUTE)];
  if (humid > cooking) return cannot('humid-longer-than-cooked', { humid: minutes(humid), cooking: minutes(cooking) });
  const core = degrees(endpoint, unit);
  const verdict = judgeHumidity(option, { cooking: cooked, humid: wet, endpoint: core });
  if (verdict.kind === 'undetermined') return cannot('no-cooking-time');
  const least = timeOf(humidNeeded(option, cooked));
  return {
    given: [
      { what: coded('humidity-option', { option }), is: coded(`humidity-option-${option}`) },
      { what: coded('cooking-time'), is: timeOf(cooked) },
      { what: coded('humid-in-all'), is: humid === 0 ? coded('not-at-all') : timeOf(wet) },
      { what: coded('endpoint'), is: degreesOf(core) },
    ],
    steps: [
      {
        what: coded('humid-at-least'),
        rule: coded(RULE[option]),
        putIn: coded(`${RULE[option]}-of`, { cooking: timeOf(cooked) }),
        gives: least,
      },
    ],
    results: [{ what: coded('humid-at-least'), is: least, value: humidNeeded(option, cooked) / MINUTE, unit: 'min' }],
    judged: [{ verdict }],
    notes: [coded('cooking-time-runs'), coded('humidity-not-needed'), coded('humidity-before-drying')],
    sources: [humiditySource],
    grounds: [],
    cautions: [cautions.limits],
  };
}

const minutes = (value: number) => asGiven(value, 'min');

const RULE: Record<HumidityOption, string> = { 1: 'humid-half', 2: 'humid-half', 3: 'humid-quarter', 4: 'humid-throughout' };
