import type { EnteredMass, MassUnit } from '../quantity/mass';
import { massOf } from '../quantity/weigh';

/** Percent: another scale, or a bag not quite emptied. Common practice, no source. */
const NEAR = 5n;
const UNITS: readonly MassUnit[] = ['g', 'kg', 'oz', 'lb'];

/**
 * The same number in another unit that hits a target: 1.06 g beside a target of 1.06 lb. A reason to ask, never to
 * change the number. @param targets what is still to be weighed, and all of it: femtograms
 */
export function weightMeant(entered: EnteredMass, targets: readonly bigint[]): EnteredMass | undefined {
  const isTarget = (weight: EnteredMass) => targets.some((target) => target > 0n && isNear(massOf(weight), target));
  if (isTarget(entered)) return undefined;
  const others = UNITS.filter((unit) => unit !== entered.unit).map((unit) => ({ value: entered.value, unit }));
  return others.find(isTarget);
}

const isNear = (mass: bigint, target: bigint): boolean => {
  const off = mass > target ? mass - target : target - mass;
  return off * 100n <= NEAR * target;
};
