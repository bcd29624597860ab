import type { ControlPoint } from '@larderbook/contracts';
import { scaleErrorOf, type InstrumentErrors, type ScaleErrors } from '@larderbook/haccp';

/** What a control point states of its scales, in femtograms a weighing. */
export const scalesAt = (errors: InstrumentErrors | undefined): ScaleErrors => ({
  ingredient: scaleErrorOf(errors?.mass),
  meat: scaleErrorOf(errors?.meat),
});

/** The worst of what a plan states of its scales, wherever it weighs what goes in. */
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
