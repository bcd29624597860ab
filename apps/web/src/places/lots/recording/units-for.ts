import type { ControlPoint } from '@larderbook/contracts';
import { unitsRead, type TemperatureUnit } from '@larderbook/haccp';
import type { UnitChoice } from '../../../ui/plausible';
import { isDegrees } from './reading-unit';

/** For a plan that names no range. Common practice, no source. */
const usual: Record<string, UnitChoice> = {
  '°F': { unit: '°F', least: -20, most: 250, decimals: 1 },
  '°C': { unit: '°C', least: -30, most: 120, decimals: 1 },
  pH: { unit: 'pH', least: 3, most: 8, decimals: 2 },
  aw: { unit: 'aw', least: 0.5, most: 1, decimals: 3 },
  '%': { unit: '%', least: 0, most: 100, decimals: 2 },
  ratio: { unit: 'ratio', least: 0.1, most: 10, decimals: 2 },
};

/** The shop's own unit first; `scale` holds the units of a weight, with what is usual for what is weighed. */
export function unitsFor({ limits, plausible }: ControlPoint, own: TemperatureUnit, scale: UnitChoice[] = []): UnitChoice[] {
  const units = unitsRead(limits.map(({ limit }) => limit));
  const weights = scale.filter(({ unit }) => units.some((each) => each === unit));
  if (weights.length > 0) return weights;
  const first = own === '°F' ? ['°F', 'lb', 'oz'] : ['°C', 'kg', 'g'];
  const inOrder = [...units].sort((a, b) => Number(first.includes(b)) - Number(first.includes(a)));
  return inOrder.map((unit): UnitChoice => {
    const [least, most] = (isDegrees(unit) && plausible?.[unit]) || [];
    return least === undefined || most === undefined
      ? (usual[unit] ?? { unit, least: 0, most: 100_000, decimals: 3 })
      : { unit, least: least / 100, most: most / 100, decimals: 1 };
  });
}
