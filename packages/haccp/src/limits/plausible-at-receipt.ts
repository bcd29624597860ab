import { boundOf } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import { isPlausible, looksLikeOtherUnit, type PlausibleRange } from '../quantity/plausible';
import type { Degrees } from '../quantity/temperature';
import type { RangeLimit } from '../kinds/range/range-limit';

const range = (min: [number, number], max: [number, number]): PlausibleRange => ({
  min: { '°C': min[0] * 100, '°F': min[1] * 100 },
  max: { '°C': max[0] * 100, '°F': max[1] * 100 },
});
/** Common practice, no source. Narrow enough that a number typed under the other unit falls outside. */
const chilled = range([-10, 14], [25, 77]);
const frozen = range([-40, -40], [25, 77]);
const whatever = range([-40, -40], [60, 140]);
const FREEZING = onCommonScale({ hundredths: 0, unit: '°C' });

export function plausibleAtReceipt(limit: RangeLimit | undefined): PlausibleRange {
  if (typeof limit?.max !== 'object') return whatever;
  return boundOf(limit.max)['°C'] > FREEZING ? chilled : frozen;
}

/** Undefined when the temperature is usual at receipt. */
export function askAboutReceipt(entered: Degrees, limit: RangeLimit | undefined): { meant?: Degrees } | undefined {
  const plausible = plausibleAtReceipt(limit);
  if (isPlausible(entered, plausible)) return undefined;
  if (!looksLikeOtherUnit(entered, plausible)) return {};
  return { meant: { ...entered, unit: entered.unit === '°C' ? '°F' : '°C' } };
}
