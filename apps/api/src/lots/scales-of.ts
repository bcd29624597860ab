import type { ControlPoint } from '@larderbook/contracts';
import { scaleErrorOf, type InstrumentErrors, type ScaleErrors } from '@larderbook/haccp';

/** Femtograms for each weighing. */
export const scalesAt = (errors: InstrumentErrors | undefined): ScaleErrors => ({
  ingredient: scaleErrorOf(errors?.mass),
  meat: scaleErrorOf(errors?.meat),
});

/** Takes the worst error of all weighing points. */
export const scalesOf = (points: readonly Pick<ControlPoint, 'takenAs' | 'errors'>[]): ScaleErrors =>
  points
    .filter(({ takenAs }) => takenAs === 'weighings')
    .map(({ errors }) => scalesAt(errors))
    .reduce(worse, { ingredient: 0n, meat: 0n });

const worse = (a: ScaleErrors, b: ScaleErrors): ScaleErrors => ({
  ingredient: larger(a.ingredient, b.ingredient),
  meat: larger(a.meat, b.meat),
});
const larger = (a: bigint, b: bigint): bigint => (a > b ? a : b);
