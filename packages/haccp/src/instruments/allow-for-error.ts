import { STEPS } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';

/**
 * At least 165 °F with a thermometer good to ± 1 °F asks for 166 °F, at most 40 °F for 39 °F (FSIS-GD-2021-14, p. 20).
 * An error in the other unit is a difference and converts by 1.8 alone, rounded to the stricter side. An unusable
 * figure or error gives NaN, against which nothing is met.
 */
export function allowForError(figure: Degrees, error: Degrees, side: 'min' | 'max'): Degrees {
  const by = Math.ceil((Math.abs(error.hundredths) * STEPS[error.unit]) / STEPS[figure.unit]);
  return { hundredths: figure.hundredths + (side === 'min' ? by : -by), unit: figure.unit };
}
