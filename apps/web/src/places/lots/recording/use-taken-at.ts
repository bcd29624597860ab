import { useState } from 'react';
import type { Amending } from './amending';

/** When it was taken: now, at the tap that saves, or when the corrected entry was, unless a person says otherwise. */
export function useTakenAt(amending?: Amending) {
  const [value, setValue] = useState(amending?.takenAt ?? '');
  return { value, setValue, at: () => value || new Date().toISOString() };
}
/** `value` is ISO 8601, empty for now. */
export type TakenAt = ReturnType<typeof useTakenAt>;
