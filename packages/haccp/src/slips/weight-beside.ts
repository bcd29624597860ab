import type { EnteredMass, MassUnit } from '../quantity/mass';
import { massOf } from '../quantity/weigh';

/** Another scale, a bag not quite emptied: a weight so near to what was to be weighed is that weight. Common practice, no source. */
const NEAR = 5n;
const UNITS: readonly MassUnit[] = ['g', 'kg', 'oz', 'lb'];

/**
 * What a weight may have meant where the same number in another unit would be what was to be weighed: 1.06 g beside a
 * target of 1.06 lb. Undefined when the weight is near a target as it stands, or no unit explains it. A reason to ask,
 * never to change the number.
 * @param targets what is still to be weighed, and all of it: femtograms
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
