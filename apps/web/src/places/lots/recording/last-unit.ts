import type { ControlPointOnLot } from '@larderbook/contracts';

/** The next number is most likely in the same unit. */
export function lastUnit({ readings }: Pick<ControlPointOnLot, 'readings'>, probe: string): string | undefined {
  const last = readings.findLast((reading) => reading.amendedBy === undefined && reading.probe === probe);
  return last && unitOf(last);
}

export const unitOf = ({ entered }: Pick<ControlPointOnLot['readings'][number], 'entered'>): string | undefined =>
  'unit' in entered ? entered.unit : undefined;
