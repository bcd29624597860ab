import { boundOf } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import { formatDegrees } from '../quantity/degrees';
import { isPlausible, looksLikeOtherUnit, type PlausibleRange } from '../quantity/plausible';
import type { Degrees } from '../quantity/temperature';
import type { RangeLimit } from '../kinds/range/range-limit';

const range = (min: [number, number], max: [number, number]): PlausibleRange => ({
  min: { '°C': min[0] * 100, '°F': min[1] * 100 },
  max: { '°C': max[0] * 100, '°F': max[1] * 100 },
});
/** Common practice, no source. Chilled goods: narrow enough that a number typed under the other unit falls outside. */
const chilled = range([-10, 14], [25, 77]);
const frozen = range([-40, -40], [25, 77]);
const whatever = range([-40, -40], [60, 140]);
const FREEZING = onCommonScale({ hundredths: 0, unit: '°C' });

/** What a delivery's temperature can sensibly be, by the limit it is received under. */
export function plausibleAtReceipt(limit: RangeLimit | undefined): PlausibleRange {
  if (typeof limit?.max !== 'object') return whatever;
  return boundOf(limit.max)['°C'] > FREEZING ? chilled : frozen;
}

/** The question to ask about a temperature at receipt; undefined when it is what one would expect. */
export function askAboutReceipt(entered: Degrees, limit: RangeLimit | undefined, item: string): string | undefined {
  const plausible = plausibleAtReceipt(limit);
  if (isPlausible(entered, plausible)) return undefined;
  const unusual = `${formatDegrees(entered)} is unusual for ${item} at receipt`;
  if (!looksLikeOtherUnit(entered, plausible)) return `${unusual}; check the thermometer and read again.`;
  return `${unusual}; did you mean ${formatDegrees({ ...entered, unit: entered.unit === '°C' ? '°F' : '°C' })}?`;
}
