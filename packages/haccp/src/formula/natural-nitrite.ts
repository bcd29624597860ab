import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';
import { asSpecies, type Ratio } from './curing-species';
import { asGiven } from '../quantity/quantities';
import { faultOf, type OrFault } from './fault';

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
 * Strength differs from lot to lot: only a certificate of the very lot counts. A least limit is judged on `least`, a
 * most on `most`.
 */
export function nitriteByCertificate(
  mass: bigint,
  ingredientLot: string,
  certificate: NitriteCertificate | undefined,
): OrFault<NitriteBrought> {
  if (mass <= 0n) return faultOf('natural-source-weighs-nothing');
  if (!certificate) return faultOf('certificate-missing', { lot: ingredientLot });
  if (certificate.ingredientLot.trim() !== ingredientLot.trim() || !ingredientLot.trim())
    return faultOf('certificate-of-another-lot', { of: certificate.ingredientLot, lot: ingredientLot });
  const stated = partsPerMillion(certificate.percent);
  const spread = partsPerMillion(certificate.plusMinus ?? 0);
  if (!stated || spread === undefined || spread > stated)
    return faultOf('certificate-unusable', { percent: asGiven(certificate.percent, '%') });
  const { numerator, denominator } = asSpecies(certificate.as, 'NaNO₂') as Ratio; // both are nitrite
  const brought = (parts: number, rounding: 'up' | 'down') => divide(mass * BigInt(parts) * numerator, MILLION * denominator, rounding);
  return { least: brought(stated - spread, 'down'), most: brought(stated + spread, 'up') };
}
