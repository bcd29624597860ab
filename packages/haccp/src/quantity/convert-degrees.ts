import { decimalText } from './decimal';
import { divide } from './divide';
import type { Degrees, TemperatureUnit } from './temperature';

/** In hundredths of a degree. */
export type Fraction = { numerator: number; denominator: 1 | 5 | 9 };

/** Steps of the common scale in a hundredth of each unit. */
export const STEPS = { '°C': 9, '°F': 5 } as const;

/**
 * The common scale: whole ninths of a hundredth of a degree Celsius. °C = (°F − 32) × 5/9, so 1 hundredth °C is 9, 1
 * hundredth °F is 5.
 */
export const onCommonScale = ({ hundredths, unit }: Degrees): number => (unit === '°C' ? hundredths * 9 : (hundredths - 3200) * 5);

/** Exact: 160 °F is 64000/9 hundredths °C, and back without loss. */
export function convertDegrees({ hundredths, unit }: Degrees, to: TemperatureUnit): Fraction {
  if (unit === to) return { numerator: hundredths, denominator: 1 };
  if (to === '°C') return reduced((hundredths - 3200) * 5, 9);
  return reduced(hundredths * 9 + 16000, 5);
}

/** For reading only, rounded once: "71.1 °C". */
export function formatConverted(temperature: Degrees, to: TemperatureUnit, decimals: 0 | 1 | 2 = 1): string {
  const { numerator, denominator } = convertDegrees(temperature, to);
  const step = BigInt(denominator) * 10n ** BigInt(2 - decimals);
  return `${decimalText(divide(BigInt(numerator), step, 'nearest'), decimals)} ${to}`;
}

const reduced = (numerator: number, denominator: 5 | 9): Fraction =>
  numerator % denominator === 0 ? { numerator: numerator / denominator, denominator: 1 } : { numerator, denominator };
