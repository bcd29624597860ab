import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';
import { asSpecies, type Ratio } from './curing-species';
import type { OrFault } from './fault';

/** Of one lot of cultured celery powder or the like; percentages by weight. */
export type NitriteCertificate = {
  ingredientLot: string;
  percent: number;
  /** Percentage points either side. */
  plusMinus?: number;
  as: 'NaNO₂' | 'NO₂';
};

/** Femtograms of sodium nitrite. */
export type NitriteBrought = { least: bigint; most: bigint };

const MILLION = 1_000_000n;

/**
 * Strength differs from lot to lot: only the certificate of the very lot weighed counts. A least limit is judged on
 * `least`, a most on `most`.
 */
export function nitriteByCertificate(
  mass: bigint,
  ingredientLot: string,
  certificate: NitriteCertificate | undefined,
): OrFault<NitriteBrought> {
  if (mass <= 0n) return { fault: 'The natural source has no weight.' };
  if (!certificate) return { fault: `There is no certificate of nitrite for lot ${ingredientLot}.` };
  if (certificate.ingredientLot.trim() !== ingredientLot.trim() || !ingredientLot.trim())
    return { fault: `The certificate is for lot ${certificate.ingredientLot}, not for lot ${ingredientLot}.` };
  const stated = partsPerMillion(certificate.percent);
  const spread = partsPerMillion(certificate.plusMinus ?? 0);
  if (!stated || spread === undefined || spread > stated) return { fault: `The certificate's ${certificate.percent} % cannot be used.` };
  const { numerator, denominator } = asSpecies(certificate.as, 'NaNO₂') as Ratio; // both are nitrite
  const brought = (parts: number, rounding: 'up' | 'down') => divide(mass * BigInt(parts) * numerator, MILLION * denominator, rounding);
  return { least: brought(stated - spread, 'down'), most: brought(stated + spread, 'up') };
}
