import type { Degrees } from '../quantity/temperature';

/**
 * A limit with the instrument's own error allowed for: a need of 165 °F and a thermometer good to ± 1 °F ask for 166 °F
 * (FSIS-GD-2021-14, p. 20).
 */
export function allowForError(figure: Degrees, error: Degrees, side: 'min' | 'max'): Degrees {
  if (figure.unit !== error.unit) throw new RangeError('The limit and the error are not in the same unit');
  const by = Math.abs(error.hundredths) * (side === 'min' ? 1 : -1);
  return { hundredths: figure.hundredths + by, unit: figure.unit };
}
