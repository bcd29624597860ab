import type { Plain } from '../../limits/measurement';
import { POSSIBLE_PLAIN } from '../../quantity/possible';
import type { AcidReading } from './acid-reached';

/** A higher pH would be left out as impossible, and what it shows with it. */
const MOST = POSSIBLE_PLAIN.pH.most;

/** The meat may be less acid than read, by the meter's error. */
export function lessAcid(acid: readonly AcidReading[], error: Plain | undefined): readonly AcidReading[] {
  const by = Math.abs(error?.thousandths ?? 0);
  if (by === 0) return acid;
  return acid.map(({ pH: { thousandths }, ...reading }) => ({
    ...reading,
    pH: { thousandths: Math.min(thousandths + by, Math.max(thousandths, MOST)) },
  }));
}
