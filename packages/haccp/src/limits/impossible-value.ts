import type { FigureLimit } from '../kinds/figure/figure-limit';
import { impossibleAs, impossibleIn, type Impossible, type TemperatureOf } from '../quantity/possible';
import type { PrintedTemperature } from '../quantity/temperature';
import { boundOf } from '../quantity/bound';
import type { RangeLimit } from '../kinds/range/range-limit';
import { isDegrees, type Measurement } from './measurement';
import type { Figures, Found, VerdictKind } from './verdict';

/** Undefined where both bounds or neither is set. */
export function temperatureOf({ min, max }: Pick<RangeLimit, 'min' | 'max'>): TemperatureOf | undefined {
  if (typeof min === 'object' && max === undefined) return 'core';
  if (typeof max !== 'object' || min !== undefined) return undefined;
  return boundOf(max)['°C'] > 0 ? 'cold' : 'frozen';
}

/** Nothing is said where a bound, with the instrument's error, is impossible itself: the range is about oven air, say. */
export function impossibleUnder(limit: RangeLimit, value: Measurement): Impossible | undefined {
  if (!isDegrees(value)) return impossibleBeside(limit.measured === 'percent' ? '%' : limit.measured, limit, value.thousandths);
  const what = temperatureOf(limit);
  return what && boundsIn(limit).every((bound) => !impossibleAs(what, bound)) ? impossibleAs(what, value) : undefined;
}

/** @param thousandths of the unit of the limit */
export const impossibleFigure = (limit: FigureLimit, thousandths: bigint): Impossible | undefined =>
  impossibleBeside(limit.unit, limit, thousandths);

/** Within a limit and impossible: doubt, never met. */
export const cannotBe = (impossible: Impossible): { kind: VerdictKind } & Found => ({
  kind: 'undetermined',
  finding: 'value-impossible',
  figures: figuresOf(impossible),
});

/** "27 °F cannot be a fermentation chamber …". */
export const figuresOf = ({ value, of, lowest, highest }: Impossible): Figures => ({
  ...{ value, lowest, highest },
  of: { code: `possible-${of === '%' ? 'share' : of}` },
});

function impossibleBeside(unit: string, { min, max }: Pick<RangeLimit, 'min' | 'max'>, value: number | bigint) {
  const bounds = [min, max].filter((bound) => typeof bound === 'number');
  return bounds.some((bound) => impossibleIn(unit, bound)) ? undefined : impossibleIn(unit, value);
}

const boundsIn = ({ min, max }: RangeLimit) =>
  [min, max]
    .filter((bound): bound is PrintedTemperature => typeof bound === 'object')
    .flatMap((bound) => (['°F', '°C'] as const).flatMap((unit) => (bound[unit] === undefined ? [] : [{ hundredths: bound[unit], unit }])));
