import { divide, roundedMass, massFromGrams, massOf, type EnteredMass, type Quantity } from '@larderbook/haccp';

/** `grams` is what is aimed at. */
export type Dose = { grams: number; ppm: number; minGrams?: number; maxGrams?: number };

/** Masses in femtograms. */
export type OnTheScale = {
  /** The reading nearest to the target, inside `sure` where there is such; `really` is what may lie there. */
  reading: bigint;
  really: { least: bigint; most: bigint };
  /** Readings that are surely allowed, however the scale rounded; absent when it is too coarse. */
  sure?: { from: bigint; to: bigint };
};

/**
 * What lies on a scale may be half a `step` less or more than it reads. This is the rounding alone; the scale's own
 * error comes on top.
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

export function ppmOf(mass: bigint, { grams, ppm }: Dose): number {
  const target = exactly(grams);
  const hundredths = BigInt(Math.ceil(ppm * 100));
  return target <= 0n ? 0 : Number(divide(mass * hundredths, target, 'up')) / 100;
}

export const gramsFigure = (mass: bigint): Quantity => roundedMass(mass, 'g', 3);

/** As the scale itself shows it. */
export const readingFigure = (reading: bigint, { unit }: EnteredMass): Quantity => roundedMass(reading, unit, 3);

/** The server answers grams with at most a few decimals. */
const exactly = (grams: number): bigint => massFromGrams(grams.toFixed(9));
