import { useState } from 'react';
import type { Refused } from './refused';

/** Saving once more what was refused as implausible says that it is right. Another number is asked about anew. */
export function useSure(refused: Pick<Refused, 'code'> | undefined) {
  const [asked, setAsked] = useState<unknown>();
  return { isSure: (entered: unknown) => isSureOf(refused, asked, entered), setAsked };
}

export function isSureOf(refused: Pick<Refused, 'code'> | undefined, asked: unknown, entered: unknown): boolean {
  return refused?.code === 'implausible-value' && JSON.stringify(asked) === JSON.stringify(entered);
}
