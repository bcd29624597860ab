import type { InputOf, recordInstrument } from '@larderbook/contracts';
import { decimalText, foodThermometerTolerance } from '@larderbook/haccp';
import type { Shop } from '../../../api/use-shop';
import { numberOf } from '../../../ui/keypad-text';

type Fields = Omit<InputOf<typeof recordInstrument>, 'instrumentId'>;
export type InstrumentDraft = { name: string; kind: Fields['kind']; unit: Fields['unit']; tolerance: string; days: string };

/** The shop's own units first. */
export function unitsOf(kind: Fields['kind'], units: Shop['units']): Fields['unit'][] {
  if (kind === 'pH meter') return ['pH'];
  const degrees: Fields['unit'][] = units === 'US' ? ['°F', '°C'] : ['°C', '°F'];
  const masses: Fields['unit'][] = units === 'US' ? ['lb', 'oz', 'g', 'kg'] : ['kg', 'g', 'lb', 'oz'];
  if (kind === 'scale') return masses;
  return kind === 'thermometer' ? degrees : [...degrees, ...masses, 'pH', 'aw', '%'];
}

/** The thermometer's tolerance is the FDA Food Code's (4-203.11); the rest is common practice, no source. */
export function usualInstrument(kind: Fields['kind'], units: Shop['units']): Omit<InstrumentDraft, 'name'> {
  const [unit = '°F'] = unitsOf(kind, units);
  if (kind === 'thermometer') return { kind, unit, tolerance: usualTolerance(unit), days: '7' };
  return { kind, unit, tolerance: usualTolerance(unit), days: '30' };
}

/** ± 2 °F or ± 1 °C for a food thermometer; any other stands on the instrument. */
export const usualTolerance = (unit: Fields['unit']): string =>
  unit === '°F' || unit === '°C' ? decimalText(foodThermometerTolerance[unit], 2) : '';

/** A figure that is missing is left for the contract to complain about. */
export const instrumentFields = ({ name, kind, unit, tolerance, days }: InstrumentDraft) => ({
  name,
  kind,
  unit,
  tolerance: numberOf(tolerance),
  checkEveryDays: numberOf(days),
});
