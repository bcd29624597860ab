import type { Lot } from '@larderbook/contracts';
import { sayRead } from '@larderbook/haccp';

type Reading = Lot['controlPoints'][number]['readings'][number];

/** A reading as it was entered: "151.5 °F", "pH 5.3", "yes: label read". */
export function sayEntered(entered: Reading['entered']): string {
  if ('answer' in entered) {
    const answer = entered.answer ? 'yes' : 'no';
    return entered.seen ? `${answer}: ${entered.seen}` : answer;
  }
  return sayRead(entered);
}

/** A weight as it was entered: "50 lb". */
export const sayWeight = ({ value, unit }: { value: number; unit: string }): string => `${value} ${unit}`;

/** A probe by its name, or by its number: "core 1", "probe 1". */
export const sayProbe = (probe: string): string => (/^\d+$/.test(probe) ? `probe ${probe}` : probe);
