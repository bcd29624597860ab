import type { Quantity } from '@larderbook/haccp';
import { writeDuration } from './write-duration';
import { writeNumber } from './write-number';

/** "151.5 °F", "pH 5.21", "aw 0.838", "1 h 30 min"; a ratio has no unit. */
export function writeQuantity({ value, unit }: Quantity, locale: string): string {
  if (unit === 'ms') return writeDuration(Number(value), locale);
  if (unit === 'days') return writeDays(value, locale);
  const number = writeNumber(value, locale);
  if (unit === 'pH' || unit === 'aw') return `${unit} ${number}`;
  if (unit === 'ratio') return number;
  return `${number} ${signOf(unit, locale)}`;
}

const writeDays = (value: string, locale: string): string =>
  new Intl.NumberFormat(locale, { style: 'unit', unit: 'day', unitDisplay: 'long' }).format(Number(value));

/** Spanish says "unidades formadoras de colonias" for colony-forming units. */
function signOf(unit: Quantity['unit'], locale: string): string {
  if (unit === 'cfu/g' && locale.startsWith('es')) return 'UFC/g';
  return unit === 'log10' ? 'log₁₀' : unit;
}
