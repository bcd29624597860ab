import type { ControlPoint } from '@larderbook/contracts';
import { convertDegrees, decimalText, divide, scaled, type TemperatureUnit } from '@larderbook/haccp';
import { numberOf } from '../../../ui/keypad-text';

export type Plausible = NonNullable<ControlPoint['plausible']>;
export type RangeText = { least: string; most: string };

/** Typed in the shop's unit and kept in both, the other rounded to the hundredth; undefined while it is no range. */
export function plausibleRange({ least, most }: RangeText, unit: TemperatureUnit): Plausible | undefined {
  const [from, to] = [least, most].map((text) => scaled(numberOf(text) ?? NaN, 2));
  if (from === undefined || to === undefined || from >= to) return undefined;
  const other = unit === '°F' ? '°C' : '°F';
  const own: [number, number] = [from, to];
  const converted: [number, number] = [inOther(from, unit, other), inOther(to, unit, other)];
  return unit === '°F' ? { '°F': own, '°C': converted } : { '°F': converted, '°C': own };
}

export function rangeText(plausible: Plausible | undefined, unit: TemperatureUnit): RangeText {
  if (!plausible) return { least: '', most: '' };
  const [least, most] = plausible[unit];
  return { least: decimalText(least, 2), most: decimalText(most, 2) };
}

function inOther(hundredths: number, unit: TemperatureUnit, other: TemperatureUnit): number {
  const { numerator, denominator } = convertDegrees({ hundredths, unit }, other);
  return Number(divide(BigInt(numerator), BigInt(denominator), 'nearest'));
}
