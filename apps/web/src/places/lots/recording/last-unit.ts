import type { ControlPointOnLot } from '@larderbook/contracts';

/** The unit of the last reading of this probe that counts: the next number is most likely in the same. */
export function lastUnit({ readings }: Pick<ControlPointOnLot, 'readings'>, probe: string): string | undefined {
  const last = readings.findLast((reading) => reading.amendedBy === undefined && reading.probe === probe);
  return last && unitOf(last);
}

/** The unit of a reading; an answer has none. */
export const unitOf = ({ entered }: Pick<ControlPointOnLot['readings'][number], 'entered'>): string | undefined =>
  'unit' in entered ? entered.unit : undefined;
