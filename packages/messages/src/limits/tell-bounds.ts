import { decimalText, printedIn, type PrintedTemperature, type Quantity, type RangeLimit, type StrictSigns } from '@larderbook/haccp';
import type { LimitVoice } from './limit-voice';

type Bounds = { min?: string; max?: string; signs?: StrictSigns };

/** "≥ 10 % and ≤ 12.5 %" */
export function tellBounds({ min, max, signs }: Bounds, { say }: LimitVoice): string {
  const least = min === undefined ? undefined : `${signs?.min ?? '≥'} ${min}`;
  const most = max === undefined ? undefined : `${signs?.max ?? '≤'} ${max}`;
  if (least !== undefined && most !== undefined) return say('least-and-most', { least, most });
  return least ?? most ?? say('no-bound');
}

/** pH and water activity are named. */
export function tellRange({ min, max, measured, signs }: RangeLimit, voice: LimitVoice): string {
  const figureOf = (bound: PrintedTemperature | number | undefined): string | undefined => {
    if (typeof bound !== 'number') return bound && tellBoth(bound, voice);
    return voice.quantity({ value: decimalText(bound, 3), unit: measured === 'percent' ? '%' : 'ratio' });
  };
  const said = tellBounds({ min: figureOf(min), max: figureOf(max), signs }, voice);
  return measured === 'pH' || measured === 'aw' ? `${measured} ${said}` : said;
}

/** "160 °F (71.1 °C)" */
export function tellBoth(printed: PrintedTemperature, { quantity }: LimitVoice): string {
  const [first, second] = (['°F', '°C'] as const)
    .filter((unit) => printed[unit] !== undefined)
    .map((unit) => quantity(printedIn(printed, unit)));
  return second === undefined ? (first ?? '–') : `${first} (${second})`;
}

/** `count` is in units of the last decimal. */
export const figureOf = (count: number, decimals: number, unit: Quantity['unit']): Quantity => ({
  value: decimalText(count, decimals),
  unit,
});
