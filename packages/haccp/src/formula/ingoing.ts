import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';
import type { Ratio } from './curing-species';
import { asGiven } from '../quantity/quantities';
import { faultOf, isFault, type Fault, type FaultCode, type OrFault } from './fault';

/** Femtograms; `substance` is pure, not the mix. `pickle` is all of the pickle made. */
export type Cure =
  | { method: 'chopped' | 'dry-cured'; substance: bigint; greenMeat: bigint }
  | { method: 'pumped' | 'massaged'; substance: bigint; pickle: bigint; pumpPercent: number }
  | { method: 'immersed'; substance: bigint; pickle: bigint; pickUpPercent: number }
  | { method: 'immersed until even'; substance: bigint; greenMeat: bigint; pickle: bigint }
  | { method: 'per batch'; substance: bigint; batch: bigint };

const weighsNothing: Record<Cure['method'], FaultCode> = {
  chopped: 'meat-weighs-nothing',
  'dry-cured': 'meat-weighs-nothing',
  pumped: 'pickle-weighs-nothing',
  massaged: 'pickle-weighs-nothing',
  immersed: 'pickle-weighs-nothing',
  'immersed until even': 'weigh-meat-and-pickle',
  'per batch': 'batch-weighs-nothing',
};

const MILLION = 1_000_000n;

/**
 * Ingoing parts per million, exact. FSIS Directive 7620.3, as quoted by later authors; the handbook's own examples were
 * not read: chopped and dry-cured, substance × 10⁶ ÷ green weight (pp. 12, 24); pumped, massaged and immersed by
 * pick-up, substance × pump × 10⁶ ÷ pickle (p. 19); immersed until even (method 2), substance × 10⁶ ÷ (meat + pickle).
 */
export function ingoingPpm(cure: Cure): OrFault<Ratio> {
  if (cure.substance < 0n) return faultOf('substance-below-nothing');
  const share = shareOf(cure);
  if (isFault(share)) return share;
  if (share.denominator <= 0n) return faultOf(weighsNothing[cure.method]);
  return share;
}

function shareOf(cure: Cure): OrFault<Ratio> {
  const substance = cure.substance * MILLION;
  switch (cure.method) {
    case 'chopped':
    case 'dry-cured':
      return { numerator: substance, denominator: cure.greenMeat };
    case 'immersed until even':
      return cure.greenMeat > 0n && cure.pickle >= 0n
        ? { numerator: substance, denominator: cure.greenMeat + cure.pickle }
        : faultOf('weigh-meat-and-pickle');
    case 'per batch':
      return { numerator: substance, denominator: cure.batch };
    case 'immersed':
      return byPickle(cure.substance, cure.pickle, cure.pickUpPercent);
    default:
      return byPickle(cure.substance, cure.pickle, cure.pumpPercent);
  }
}

function byPickle(substance: bigint, pickle: bigint, percent: number): OrFault<Ratio> {
  const parts = partsOf(percent);
  return typeof parts === 'bigint' ? { numerator: substance * parts, denominator: pickle } : parts;
}

/** Femtograms, rounded down. */
export function substanceForPickle(ppm: number, pickle: bigint, pumpPercent: number): bigint | Fault {
  const parts = partsOf(pumpPercent);
  if (typeof parts !== 'bigint') return parts;
  if (!Number.isSafeInteger(ppm) || ppm < 0) return faultOf('ppm-unusable', { ppm: asGiven(ppm, 'ppm') });
  return pickle > 0n ? divide(BigInt(ppm) * pickle, parts, 'down') : faultOf('pickle-weighs-nothing');
}

/** Femtograms, rounded up. */
export function substanceIn(mix: bigint, percent: number): bigint | Fault {
  const parts = partsOf(percent);
  if (typeof parts !== 'bigint') return parts;
  return mix >= 0n ? divide(mix * parts, MILLION, 'up') : faultOf('mix-below-nothing');
}

function partsOf(percent: number): bigint | Fault {
  const parts = partsPerMillion(percent);
  return parts ? BigInt(parts) : faultOf('percent-unusable', { percent: asGiven(percent, '%') });
}
