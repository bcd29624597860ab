import type { SayOf } from '@larderbook/messages';

/** Outside the usual values the person is asked, never refused. */
export type UnitChoice = { unit: string; least: number; most: number; decimals: number };

export type MeantInstead = { value: number; unit: string };

/** `meant` may be empty. */
export type NumberQuestion = { because: string; meant: MeantInstead[] };

/** Judges by the range alone; undefined when the number is usual in its unit. */
export function askByRange(value: number, unit: string, units: UnitChoice[], say: SayOf<'recording'>): NumberQuestion | undefined {
  const meant = meantInstead(value, unit, units);
  const own = units.find((choice) => choice.unit === unit);
  return meant && own && { because: say('usual-is', { least: String(own.least), most: String(own.most), unit: own.unit }), meant };
}

/** Undefined when `value` is usual in its unit; otherwise what might have been meant (possibly nothing). */
export function meantInstead(value: number, unit: string, units: UnitChoice[]): MeantInstead[] | undefined {
  const own = units.find((choice) => choice.unit === unit);
  if (!own || isUsual(value, own)) return undefined;
  const otherUnit = units.filter((other) => other.unit !== unit && isUsual(value, other));
  const slipped = slips(value, own.decimals).filter((other) => isUsual(other, own));
  return [...otherUnit.map((other) => ({ value, unit: other.unit })), ...slipped.map((other) => ({ value: other, unit }))].slice(0, 3);
}

const isUsual = (value: number, { least, most }: UnitChoice) => value >= least && value <= most;

/** The point forgotten (718 for 71.8), or two neighbouring figures swapped (17.8 for 71.8). */
function slips(value: number, decimals: number): number[] {
  const text = String(value);
  const swapped = [...text]
    .slice(1)
    .map((_figure, i) => swapAt(text, i))
    .filter((other) => /^-?\d+(\.\d+)?$/.test(other));
  const shifted = Array.from({ length: decimals }, (_none, i) => Number((value / 10 ** (i + 1)).toFixed(decimals)));
  const all = [...shifted, ...swapped.map(Number)];
  return [...new Set(all.filter((other) => other !== value))];
}

const swapAt = (text: string, i: number) => text.slice(0, i) + text.charAt(i + 1) + text.charAt(i) + text.slice(i + 2);
