import type { ControlPointOnLot } from '@larderbook/contracts';
import { usualOfPiece } from '@larderbook/haccp';
import type { UnitChoice } from '../../../ui/plausible';
import { femtogramsIn, massUnits, type ShownUnits } from './mass-units';

/**
 * A piece weighs no less than half of before and hardly more, a first one no more than the meat of its lot: 642 lb is
 * asked about where 642 g was meant, and 8.2 lb after 10 kg. Empty where neither is known.
 */
export function usualWeights(
  { readings }: Pick<ControlPointOnLot, 'readings'>,
  probe: string,
  meatBlockGrams: number,
  shown: ShownUnits,
): UnitChoice[] {
  const before = readings
    .filter((reading) => reading.amendedBy === undefined && reading.probe === probe)
    .flatMap(({ entered }) => ('value' in entered ? (femtogramsIn(entered) ?? []) : []));
  const usual = usualOfPiece(before);
  if (usual) return massUnits(shown, inGrams(usual.most), inGrams(usual.least));
  return meatBlockGrams > 0 ? massUnits(shown, meatBlockGrams) : [];
}

const inGrams = (femtograms: bigint): number => Number(femtograms) / 1e15;
