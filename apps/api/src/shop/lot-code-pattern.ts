import { patternFault } from '@larderbook/haccp';
import { Problem } from '../platform/problem';

/** Throws `invalid-input` when the pattern cannot give each lot its own code. */
export function checkLotCodePattern(pattern: string, pointer = '#/lotCodePattern'): void {
  const fault = patternFault(pattern);
  if (fault) throw new Problem('invalid-input', fault, pointer);
}
