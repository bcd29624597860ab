import { allowForError } from '../instruments/allow-for-error';
import { fsisCooking } from '../limit-sets/sources';
import { degrees, sayDegrees } from '../quantity/degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CannotCalculate, Calculation } from './calculation';

export type LimitWithInstrument = { figure: number; error: number; unit: TemperatureUnit; side: 'min' | 'max' };

/** What a thermometer must show so that the limit is held whatever its error. */
export function limitWithInstrument({ figure, error, unit, side }: LimitWithInstrument): Calculation | CannotCalculate {
  const needed = allowForError(degrees(figure, unit), degrees(error, unit), side);
  const isLeast = side === 'min';
  return {
    title: 'A limit with the thermometer’s error allowed for',
    given: [
      { what: isLeast ? 'At least' : 'At most', said: sayDegrees(degrees(figure, unit)) },
      { what: 'The thermometer is good to', said: `± ${sayDegrees(degrees(Math.abs(error), unit))}` },
    ],
    steps: [
      {
        what: 'What it must show',
        rule: isLeast ? 'limit + error' : 'limit − error',
        putIn: `${figure} ${isLeast ? '+' : '−'} ${Math.abs(error)} ${unit}`,
        gives: sayDegrees(needed),
      },
    ],
    results: [{ what: isLeast ? 'Shown at least' : 'Shown at most', said: sayDegrees(needed), value: needed.hundredths / 100, unit }],
    verdicts: [],
    notes: ['A difference of temperature converts by 1.8 alone: ± 1 °C is ± 1.8 °F.'],
    sources: [fsisCooking('p. 20')],
    cautions: [],
  };
}
