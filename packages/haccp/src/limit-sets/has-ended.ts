import type { LimitRow } from './limit-set';

/** Whether a row has stopped counting by a day (ISO 8601). One that ends with a year or a month counts to its end. */
export const hasEnded = ({ validUntil }: Pick<LimitRow, 'validUntil'>, today: string): boolean =>
  validUntil !== undefined && today.slice(0, validUntil.length) > validUntil;
