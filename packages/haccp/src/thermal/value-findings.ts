import { isInstant, isPossible, isSetAside } from './curve';
import type { FindingKind } from './finding';
import type { CurveReading } from './instant';

/** Loggers write these for a missing probe, in hundredths of the logger's unit. */
const OPEN_CIRCUIT = new Set([-12_700, -20_000, 99_900, 655_350]);

/** Left out whatever its neighbours are; undefined when it can be true. */
export function valueFinding(reading: CurveReading): FindingKind | undefined {
  if (isSetAside(reading)) return 'not of the core';
  if (!isInstant(reading?.at)) return 'no time';
  const hundredths = reading.temperature?.hundredths;
  if (isPossible(reading.temperature)) return undefined;
  if (!Number.isSafeInteger(hundredths)) return 'no number';
  return OPEN_CIRCUIT.has(hundredths) ? 'open circuit' : 'impossible';
}
