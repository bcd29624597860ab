import type { Degrees } from '../quantity/temperature';

/** Ninths of a hundredth °C in a hundredth of each unit. */
const STEPS = { '°C': 9, '°F': 5 } as const;

/**
 * A limit with the instrument's own error allowed for: a need of at least 165 °F and a thermometer good to ± 1 °F ask
 * for 166 °F, at most 40 °F for 39 °F (FSIS-GD-2021-14, p. 20). An error in the other unit is a difference and converts
 * by 1.8 alone; what does not come out in hundredths is rounded to the stricter side. A figure or an error that is no
 * number gives a figure that is none, against which nothing is met.
 */
export function allowForError(figure: Degrees, error: Degrees, side: 'min' | 'max'): Degrees {
  const by = Math.ceil((Math.abs(error.hundredths) * STEPS[error.unit]) / STEPS[figure.unit]);
  return { hundredths: figure.hundredths + (side === 'min' ? by : -by), unit: figure.unit };
}
