import { useState } from 'react';
import type { Amending } from './amending';

/** A correction begins with the corrected entry's time; now is the tap that saves. */
export function useTakenAt(amending?: Amending) {
  const [value, setValue] = useState(amending?.takenAt ?? '');
  return { value, setValue, at: () => value || new Date().toISOString() };
}
/** `value` is ISO 8601, empty for now. */
export type TakenAt = ReturnType<typeof useTakenAt>;
