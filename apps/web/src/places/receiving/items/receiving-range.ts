import { isOfKind, formatPrinted, type TemperatureUnit } from '@larderbook/haccp';
import type { Item } from '../known';

/** "≤ 40 °F" in the shop's unit, or nothing. */
export function receivingRange({ receivingLimit: limit }: Pick<Item, 'receivingLimit'>, unit: TemperatureUnit): string {
  if (!isOfKind(limit, 'range')) return '';
  const bounds = [
    typeof limit.min === 'object' && `≥ ${formatPrinted(limit.min, unit)}`,
    typeof limit.max === 'object' && `≤ ${formatPrinted(limit.max, unit)}`,
  ];
  return bounds.filter(Boolean).join(', ');
}
