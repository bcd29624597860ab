import { useState } from 'react';
import type { Amending } from './amending';

/** A correction begins with the corrected entry's time; now is the tap that saves. */
export function useTakenAt(amending?: Amending) {
  const [value, setValue] = useState(amending?.takenAt);
  const now = () => new Date().toISOString();
  return {
    value,
    setValue,
    /** For a preview. */
    at: () => value || now(),
    /** For the record: a time half typed is left for the contract to refuse. */
    toRecord: () => value ?? now(),
    /** For one more entry. */
    again: () => setValue(undefined),
  };
}
/** `value` is ISO 8601, undefined for now, empty while what is typed is no moment. */
export type TakenAt = ReturnType<typeof useTakenAt>;
