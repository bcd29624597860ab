import { divide, roundedMass, massFromGrams, massOf, type EnteredMass, type Quantity } from '@larderbook/haccp';

/** A curing ingredient of a batch, in grams: what is aimed at, and what is allowed at least and at most. */
export type Dose = { grams: number; ppm: number; minGrams?: number; maxGrams?: number };

/** What a scale can tell of a dose. Weights in femtograms. */
export type OnTheScale = {
  /** The reading nearest to the target, inside what is surely allowed where there is such; and what may really lie there. */
  reading: bigint;
  really: { least: bigint; most: bigint };
  /** Readings that are surely allowed, however the scale rounded; none when it is too coarse for so little. */
  sure?: { from: bigint; to: bigint };
};

/**
 * A scale that shows steps of `step` rounds to the nearest: what lies on it may be half a step less or more than it
 * reads. This is the rounding alone; the error of the scale itself comes on top of it.
 */
export function onTheScale({ grams, minGrams, maxGrams }: Dose, step: EnteredMass): OnTheScale {
  const width = massOf(step);
  const half = divide(width, 2n, 'up');
  const from = divide((minGrams === undefined ? 0n : exactly(minGrams)) + half, width, 'up') * width;
  const to = maxGrams === undefined ? undefined : divide(exactly(maxGrams) - half, width, 'down') * width;
  const sure = to === undefined || to < from ? undefined : { from, to };
  const nearest = divide(exactly(grams), width, 'nearest') * width;
  const reading = sure ? within(nearest, sure) : nearest;
  return {
    reading,
    really: { least: reading > half ? reading - half : 0n, most: reading + half },
    sure,
  };
}

const within = (reading: bigint, { from, to }: { from: bigint; to: bigint }): bigint =>
  reading < from ? from : reading > to ? to : reading;

/** The ppm that another weight of the same ingredient would give, rounded up to the hundredth. */
export function ppmOf(mass: bigint, { grams, ppm }: Dose): number {
  const target = exactly(grams);
  const hundredths = BigInt(Math.ceil(ppm * 100));
  return target <= 0n ? 0 : Number(divide(mass * hundredths, target, 'up')) / 100;
}

/** To the milligram at most. */
export const gramsFigure = (mass: bigint): Quantity => roundedMass(mass, 'g', 3);

/** As the scale itself shows it. */
export const readingFigure = (reading: bigint, { unit }: EnteredMass): Quantity => roundedMass(reading, unit, 3);

/** Grams as the book answers them: a number of at most a few decimals. */
const exactly = (grams: number): bigint => massFromGrams(grams.toFixed(9));
