import type { ControlPointOnLot } from '@larderbook/contracts';
import type { UnitChoice } from '../../../ui/plausible';
import type { ShownUnits } from '../say/say-grams';
import { gramsIn, massUnits } from './mass-units';

/** So much more than before is no question yet: frost, and another scale. Common practice, no source. */
const slack = 1.05;

/**
 * The units of the scale at a control point, with what is usual in each: little more than this piece weighed before, for
 * what dries gets lighter, and before its first weighing no more than the meat of its lot. So 642 lb is asked about
 * where 642 g was meant. Nothing where neither is known yet.
 */
export function usualWeights(
  { readings }: Pick<ControlPointOnLot, 'readings'>,
  probe: string,
  meatBlockGrams: number,
  shown: ShownUnits,
): UnitChoice[] {
  const before = readings
    .filter((reading) => reading.amendedBy === undefined && reading.probe === probe)
    .flatMap(({ entered }) => ('value' in entered ? (gramsIn(entered) ?? []) : []));
  const most = before.length > 0 ? Math.max(...before) * slack : meatBlockGrams;
  return most > 0 ? massUnits(shown, most) : [];
}
