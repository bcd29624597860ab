import { allowForError } from '../instruments/allow-for-error';
import { fsisCooking } from '../limit-sets/sources';
import { coded } from '../limits/coded';
import { sum } from '../limits/line-part';
import { degrees } from '../quantity/degrees';
import { degreesOf } from '../quantity/quantities';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation } from './calculation';
import type { CannotCalculate } from './cannot';

export type LimitWithInstrument = { figure: number; error: number; unit: TemperatureUnit; side: 'min' | 'max' };

export function limitWithInstrument({ figure, error, unit, side }: LimitWithInstrument): Calculation | CannotCalculate {
  const needed = allowForError(degrees(figure, unit), degrees(error, unit), side);
  const isLeast = side === 'min';
  const good = degreesOf(degrees(Math.abs(error), unit));
  const limit = degreesOf(degrees(figure, unit));
  return {
    given: [
      { what: coded(isLeast ? 'at-least' : 'at-most'), is: limit },
      { what: coded('thermometer-good-to'), is: coded('plus-minus', { figure: good }) },
    ],
    steps: [
      {
        what: coded('what-it-must-show'),
        rule: coded(isLeast ? 'limit-plus-error' : 'limit-minus-error'),
        putIn: isLeast ? sum`${limit} + ${good}` : sum`${limit} − ${good}`,
        gives: degreesOf(needed),
      },
    ],
    results: [{ what: coded(isLeast ? 'shown-at-least' : 'shown-at-most'), is: degreesOf(needed), value: needed.hundredths / 100, unit }],
    judged: [],
    notes: [coded('difference-converts')],
    sources: [fsisCooking('p. 20')],
    grounds: [],
    cautions: [],
  };
}
