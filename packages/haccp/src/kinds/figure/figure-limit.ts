import type { LimitFault, LimitSlip } from '../../limits/limit-fault-code';
import type { Source, StrictSigns } from '../../limits/source';
import { decimalText } from '../../quantity/decimal';

/** The units of figures that are no temperature and no holding time. */
export type FigureUnit = 'ppm' | '%' | 'ratio' | 'aw' | 'pH' | 'h' | 'min' | 'days' | '°C·h' | '°F·h' | 'log10' | 'cfu/g' | 'lb' | 'mm';

/**
 * Bounds on a figure that is worked out or analysed: a composition, a ratio, days of life. Whole thousandths of the
 * unit; both bounds are inside unless `signs` says otherwise.
 */
export type FigureLimit = {
  kind: 'figure';
  /** What is compared: "fat", "moisture to protein". */
  of: string;
  unit: FigureUnit;
  min?: number;
  max?: number;
  signs?: StrictSigns;
  /** As the source writes it, where it is not the plain figure: "¼ oz per 100 lb". */
  printed?: string;
  /** The source calls the figure useful and asks for none: what lies outside is said, and nothing is missed by it. */
  advises?: true;
  source: Source;
};

/** Why nothing could be judged against it; undefined when it is sound. */
export function figureFault({ min, max }: FigureLimit): LimitFault | undefined {
  const bounds = [min, max].filter((bound) => bound !== undefined);
  if (bounds.length === 0) return { code: 'neither-least-nor-most' };
  if (!bounds.every((bound) => Number.isSafeInteger(bound))) return { code: 'bound-unusable' };
  return min !== undefined && max !== undefined && min > max ? { code: 'least-above-most' } : undefined;
}

/** What a source is quoted with has to compare with a figure. */
export const figureSlips = ({ printed }: FigureLimit): LimitSlip[] =>
  printed === undefined || (/[≤≥<>]|within|for/.test(printed) && /\d/.test(printed)) ? [] : [{ code: 'comparison-missing' }];

/** "156.25 ppm", "1.9", "pH 5" */
export function formatAmount(thousandths: bigint | number, unit: FigureUnit, decimals = 3): string {
  const text = decimalText(thousandths, decimals);
  if (unit === 'ratio' || unit === 'aw' || unit === 'pH') return text;
  return `${text} ${unit}`;
}
