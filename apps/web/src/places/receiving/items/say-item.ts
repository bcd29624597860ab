import { isOfKind, sayPrinted, type TemperatureUnit } from '@larderbook/haccp';
import type { Item } from '../known';

/** "6.25 % sodium nitrite", or nothing. */
export const saySubstance = ({ substance, fractionPercent }: Pick<Item, 'substance' | 'fractionPercent'>): string =>
  substance ? `${fractionPercent ?? '?'} % ${substance}` : '';

/** "meat, pork" */
export const sayKind = ({ kind, species }: Pick<Item, 'kind' | 'species'>): string =>
  species && species !== 'none' ? `${kind}, ${species}` : kind;

/** "≤ 40 °F" in the shop's unit, or nothing. */
export function sayReceiving({ receivingLimit: limit }: Pick<Item, 'receivingLimit'>, unit: TemperatureUnit): string {
  if (!isOfKind(limit, 'range')) return '';
  const bounds = [
    typeof limit.min === 'object' && `≥ ${sayPrinted(limit.min, unit)}`,
    typeof limit.max === 'object' && `≤ ${sayPrinted(limit.max, unit)}`,
  ];
  return bounds.filter(Boolean).join(', ');
}
