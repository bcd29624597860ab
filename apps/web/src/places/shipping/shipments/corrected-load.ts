import { numberOf } from '../../../ui/keypad-text';
import type { Shipment } from './shipment';

type Line = Pick<Shipment['lines'][number], 'packingId'>;

/** As typed, by packing. */
export type Counts = ReadonlyMap<string, string>;

export const isTakenOff = (counts: Counts, packingId: string): boolean => numberOf(counts.get(packingId) ?? '') === 0;

/** Only a 0 that was typed takes a line off; a count left empty is for the contract to refuse. */
export const loadOf = (lines: Line[], counts: Counts) =>
  lines
    .filter(({ packingId }) => !isTakenOff(counts, packingId))
    .map(({ packingId }) => ({ packingId, count: numberOf(counts.get(packingId) ?? '') ?? NaN }));
