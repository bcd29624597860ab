import type { LimitFault, LimitSlip } from '../../limits/limit-fault-code';
import type { Source, StrictSigns } from '../../limits/source';

export type FigureUnit = 'ppm' | '%' | 'ratio' | 'aw' | 'pH' | 'h' | 'min' | 'days' | '°C·h' | '°F·h' | 'log10' | 'cfu/g' | 'lb' | 'mm';

/**
 * For a composition, a ratio, days of life. Whole thousandths of the unit; bounds are inside unless `signs` says
 * otherwise.
 */
export type FigureLimit = {
  kind: 'figure';
  /** "fat", "moisture to protein". */
  of: string;
  unit: FigureUnit;
  min?: number;
  max?: number;
  signs?: StrictSigns;
  /** Where not the plain figure: "¼ oz per 100 lb". */
  printed?: string;
  /** The source advises the figure: outside is told, and nothing is missed by it. */
  advises?: true;
  source: Source;
};

export function figureFault({ min, max }: FigureLimit): LimitFault | undefined {
  const bounds = [min, max].filter((bound) => bound !== undefined);
  if (bounds.length === 0) return { code: 'neither-least-nor-most' };
  if (!bounds.every((bound) => Number.isSafeInteger(bound))) return { code: 'bound-unusable' };
  return min !== undefined && max !== undefined && min > max ? { code: 'least-above-most' } : undefined;
}

/** A printed text has to compare with a figure. */
export const figureSlips = ({ printed }: FigureLimit): LimitSlip[] =>
  printed === undefined || (/[≤≥<>]|within|for/.test(printed) && /\d/.test(printed)) ? [] : [{ code: 'comparison-missing' }];
