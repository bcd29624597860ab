import type { LotHead } from '@larderbook/contracts';
import type { PointOnLot } from './judge-points';

/** A stage that will miss comes before one at risk. */
export function warningOf(points: readonly PointOnLot[]): LotHead['warning'] {
  const warnings = points.flatMap(({ point: { controlPointId, name }, forecast }) =>
    forecast?.state === 'will miss' || forecast?.state === 'at risk' ? [{ controlPointId, name, forecast }] : [],
  );
  return warnings.find(({ forecast }) => forecast.state === 'will miss') ?? warnings[0];
}
