import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';
import type { PlainPhrase } from '../limits/verdict';
import type { Weight } from './within-scales';

/** Percentages as stated by its item. */
export type Holding = {
  mass: bigint;
  name: string | PlainPhrase;
  saltPercent?: number;
  waterPercent?: number;
  /** Error of its scale, either way. */
  error?: bigint;
};

/** Femtograms; or the first thing of unknown salt or water. */
export type SaltAndWater = { salt: bigint; water: bigint } | { lacking: string | PlainPhrase };

/** `all` is the whole earlier lot. */
export type ReworkedPhase = {
  mass: bigint;
  name: string | PlainPhrase;
  all: bigint;
  of: SaltAndWater;
  error?: bigint;
  /** `all` within the errors of its scales. */
  allWithin?: Weight;
};

const MILLION = 1_000_000n;

/**
 * For a least limit: salt rounded down and water up, by less than a femtogram an entry, and every weighing off by its
 * error to that side. Later loss or gain of water is not known. One thing of unknown salt or water leaves both unknown.
 */
export function saltAndWater(parts: readonly Holding[], reworked: readonly ReworkedPhase[]): SaltAndWater {
  let [salt, water] = [0n, 0n];
  for (const { mass, name, saltPercent, waterPercent, error = 0n } of parts) {
    const [ofSalt, ofWater] = [shareOf(saltPercent), shareOf(waterPercent)];
    if (ofSalt === undefined || ofWater === undefined) return { lacking: name };
    salt += divide(atLeastNone(mass - error) * ofSalt, MILLION, 'down');
    water += divide((mass + error) * ofWater, MILLION, 'up');
  }
  for (const { mass, name, all, of, error = 0n, allWithin = { least: all, most: all } } of reworked) {
    if ('lacking' in of || allWithin.least <= 0n) return { lacking: name };
    salt += divide(atLeastNone(mass - error) * of.salt, allWithin.most, 'down');
    water += divide((mass + error) * of.water, allWithin.least, 'up');
  }
  return { salt, water };
}

const atLeastNone = (mass: bigint): bigint => (mass > 0n ? mass : 0n);

function shareOf(percent: number | undefined): bigint | undefined {
  const parts = percent === undefined ? undefined : partsPerMillion(percent);
  return parts === undefined ? undefined : BigInt(parts);
}
