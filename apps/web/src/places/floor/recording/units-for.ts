import type { ControlPoint } from '@larderbook/contracts';
import type { TemperatureUnit } from '@larderbook/haccp';
import type { UnitChoice } from '../../../ui/plausible';

/** A sensible reading in food, where the plan names no range of its own. Common practice, no source. */
const usual: Record<string, UnitChoice> = {
  '°F': { unit: '°F', least: -20, most: 250, decimals: 1 },
  '°C': { unit: '°C', least: -30, most: 120, decimals: 1 },
  pH: { unit: 'pH', least: 3, most: 8, decimals: 2 },
  aw: { unit: 'aw', least: 0.5, most: 1, decimals: 3 },
  '%': { unit: '%', least: 0, most: 100, decimals: 2 },
};

/** The units a control point is read in, the shop's own first, each with what is usual in it. */
export function unitsFor({ limits, takenAs, plausible }: ControlPoint, own: TemperatureUnit): UnitChoice[] {
  const plainUnit = takenAs === 'value' ? plainUnitOf(limits) : undefined;
  if (plainUnit) return chosen(plainUnit);
  const units: TemperatureUnit[] = own === '°F' ? ['°F', '°C'] : ['°C', '°F'];
  return units.flatMap((unit) => {
    const [least, most] = plausible?.[unit] ?? [];
    return least === undefined || most === undefined
      ? chosen(unit)
      : [{ unit, least: least / 100, most: most / 100, decimals: 1 }];
  });
}

function plainUnitOf(limits: ControlPoint['limits']): string | undefined {
  const range = limits.map(({ limit }) => limit).find((limit) => limit.kind === 'range');
  if (!range || range.measured === 'temperature') return undefined;
  return range.measured === 'percent' ? '%' : range.measured;
}

const chosen = (unit: string): UnitChoice[] => (usual[unit] ? [usual[unit]] : []);
