import { scaled } from '@larderbook/haccp';
import { numberOf } from '../../../ui/keypad-text';

export type DurationText = { amount: string; unit: 's' | 'min' | 'h' };

const secondsIn = { s: 1, min: 60, h: 3600 } as const;
export const noDuration: DurationText = { amount: '', unit: 'min' };

/** Seconds to the tenth, as printed tables have them. */
export function secondsOf({ amount, unit }: DurationText): number | undefined {
  const hundredths = scaled(numberOf(amount) ?? NaN, 2);
  const tenths = hundredths === undefined ? undefined : (hundredths * secondsIn[unit]) / 10;
  return tenths !== undefined && Number.isInteger(tenths) ? tenths / 10 : undefined;
}

/** The largest unit that holds it with two decimals: 5400 s is "1.5 h", 3798 s is "63.3 min", 16.9 s stays. */
export function durationText(seconds: number): DurationText {
  const tenths = Math.round(seconds * 10);
  const unit = tenths >= 36_000 && tenths % 360 === 0 ? 'h' : tenths >= 600 && tenths % 6 === 0 ? 'min' : 's';
  return { amount: String(tenths / 10 / secondsIn[unit]), unit };
}
