import type { LimitRow } from './limit-set';

/** ISO 8601; a row that ends with a year or a month counts to its end. */
export const hasEnded = ({ validUntil }: Pick<LimitRow, 'validUntil'>, today: string): boolean =>
  validUntil !== undefined && today.slice(0, validUntil.length) > validUntil;
