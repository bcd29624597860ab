import {
  decimalText,
  isOfKind,
  plausibleAtReceipt,
  type PrintedTemperature,
  type RangeLimit,
  type TemperatureUnit,
} from '@larderbook/haccp';
import type { Shop } from '../../../api/use-shop';
import type { UnitChoice } from '../../../ui/plausible';
import type { Item } from '../known';

const pounds: UnitChoice = { unit: 'lb', least: 0, most: 5000, decimals: 3 };
const kilos: UnitChoice = { unit: 'kg', least: 0, most: 2500, decimals: 3 };
const small: UnitChoice[] = [
  { unit: 'oz', least: 0, most: 800, decimals: 2 },
  { unit: 'g', least: 0, most: 25_000, decimals: 2 },
];

/** The shop's own unit first. What is usual at the door is common practice, no source. */
export const doorScale = (units: Shop['units']): UnitChoice[] =>
  units === 'US' ? [pounds, ...small, kilos] : [kilos, ...small.toReversed(), pounds];

/** Undefined when it is not judged by temperature. */
export const receivingRange = ({ receivingLimit }: Pick<Item, 'receivingLimit'>): RangeLimit | undefined =>
  isOfKind(receivingLimit, 'range') ? receivingLimit : undefined;

/** Outside what is sensible for the item the person is asked, by the server's rule. */
export function doorThermometer(item: Pick<Item, 'receivingLimit'>, own: TemperatureUnit): UnitChoice[] {
  const { min, max } = plausibleAtReceipt(receivingRange(item));
  const units: TemperatureUnit[] = own === '°F' ? ['°F', '°C'] : ['°C', '°F'];
  return units.map((unit) => ({ unit, least: figure(min, unit), most: figure(max, unit), decimals: 1 }));
}

const figure = (printed: PrintedTemperature, unit: TemperatureUnit): number => Number(decimalText(printed[unit] ?? NaN, 2));
