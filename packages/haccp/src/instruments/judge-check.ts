import type { Saying } from '../limits/told';
import { decimalText, scaled } from '../quantity/decimal';
import { sayRead } from '../quantity/say-read';

/** A check of an instrument against a known value, all in the instrument's own unit with at most three decimals. */
export type Check = { expected: number; observed: number; tolerance: number; unit: string };

/** Met when the instrument is off by no more than its tolerance. Compared in thousandths, without rounding. */
export function judgeCheck({ expected, observed, tolerance, unit }: Check): Saying {
  const [should, shown, allowed] = [expected, observed, tolerance].map((value) => scaled(value, 3));
  const say = (thousandths: number) => `${decimalText(thousandths, 3)} ${unit}`;
  const read = (thousandths: number) => sayRead({ value: decimalText(thousandths, 3), unit });
  const source = { citation: 'Tolerance set for this instrument by the establishment', edition: '', confirmed: true };
  if (should === undefined || shown === undefined || allowed === undefined) {
    const because = 'The values cannot be compared.';
    const shared = { measured: 'nothing usable', limit: `± ${tolerance} ${unit}`, notes: [], source };
    return { ...shared, kind: 'undetermined', because, next: 'Check it again.' };
  }
  const off = shown - should;
  const spare = allowed - Math.abs(off);
  const shared = { measured: `${read(shown)} at ${read(should)}`, limit: `± ${say(allowed)}`, notes: [], source, spare };
  const reads = off === 0 ? 'It reads true' : `It reads ${say(Math.abs(off))} too ${off > 0 ? 'high' : 'low'}`;
  if (Math.abs(off) <= allowed) return { ...shared, kind: 'met', because: `${reads}; ± ${say(allowed)} is allowed.` };
  return {
    ...shared,
    kind: 'missed',
    margin: `${say(Math.abs(off) - allowed)} beyond`,
    because: `${reads}; ± ${say(allowed)} is allowed.`,
    next: 'Adjust or withdraw it, and look again at everything measured with it since its last good check.',
  };
}
