import type { InputOf, listInstruments, recordCalibration, ReplyOf } from '@larderbook/contracts';
import { boilingWater, decimalText, icePoint, type TemperatureUnit } from '@larderbook/haccp';
import type { UnitChoice } from '../../../ui/plausible';

export type Instrument = ReplyOf<typeof listInstruments>['instruments'][number];
export type CheckMethod = InputOf<typeof recordCalibration>['method'];

const checkMethods = ['ice point', 'boiling point', 'reference instrument', 'test weight'] as const satisfies CheckMethod[];

export const knownMethod = (method: string): CheckMethod | undefined => checkMethods.find((each) => each === method);

export function methodsFor({ kind }: Pick<Instrument, 'kind'>): CheckMethod[] {
  if (kind === 'thermometer') return ['ice point', 'boiling point', 'reference instrument'];
  return kind === 'scale' ? ['test weight', 'reference instrument'] : ['reference instrument'];
}

export const isTemperature = (unit: string): unit is TemperatureUnit => unit === '°C' || unit === '°F';

/**
 * At the ice point, or in boiling water so many metres above the sea; undefined when it has to be read off a standard.
 */
export function shouldRead(method: CheckMethod, unit: string, metres?: number): number | undefined {
  if (!isTemperature(unit)) return undefined;
  if (method === 'ice point') return Number(decimalText(icePoint(unit).hundredths, 2));
  if (method !== 'boiling point' || metres === undefined) return undefined;
  const water = boilingWater({ from: 'height', metres }, unit);
  return water.kind === 'known' ? Number(decimalText(water.reads.hundredths, 2)) : undefined;
}

const decimalsOf: Record<string, number> = { '°C': 1, '°F': 1, g: 2, oz: 3, kg: 3, lb: 3, pH: 2 };
const least: Record<string, number> = { '°C': 5, '°F': 10, pH: 1 };

/**
 * What an instrument may show at a known value, right or wrong; beyond it the person is asked. Common practice, no
 * source.
 */
export function usualShown({ unit, tolerance }: Pick<Instrument, 'unit' | 'tolerance'>, expected: number): UnitChoice {
  const decimals = decimalsOf[unit] ?? 2;
  const around = Math.max(5 * tolerance, least[unit] ?? expected * 0.1);
  const rounded = (value: number) => Number(value.toFixed(decimals));
  return {
    unit,
    least: rounded(isTemperature(unit) ? expected - around : Math.max(0, expected - around)),
    most: rounded(expected + around),
    decimals,
  };
}
