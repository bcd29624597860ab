import { batchOf, doseFor, ingoingPpm, judgeConcentration, massOf, nitriteComminuted } from '@larderbook/haccp';
import type { Measured } from '../report/figure';
import { medianTimeOf } from '../report/median-time';

const evaluations = 1000;
const rounds = 15;
const lines = [
  { name: 'Salt', percent: 1.8 },
  { name: 'Curing salt 6.25 %', percent: 0.25 },
  { name: 'Pepper', percent: 0.3 },
  { name: 'Ice', percent: 10 },
];
const grams = Array.from({ length: evaluations }, (_, index) => 5000 + index * 7);
const blocks = grams.map((value) => massOf({ value, unit: 'g' }));

/** A formula scaled, its cure dosed and judged exactly a thousand times, beside the same sums in plain numbers. */
export async function formulas(): Promise<Measured> {
  const beside = { what: 'the same sums in floating point', value: await medianTimeOf(rounds, inPlainNumbers) };
  const value = await medianTimeOf(rounds, exactly);
  return {
    title: 'A thousand formulas of four lines: scaled, dosed, ingoing ppm and verdict',
    figures: [{ what: 'to the femtogram', value, unit: 'ms', beside, note: 'at most 10 ms' }],
  };
}

function exactly(): number {
  let met = 0;
  for (const meat of blocks) {
    const batch = batchOf(lines, { trimmedMeat: meat });
    const cure = 'fault' in batch ? undefined : batch.lines[1]?.target;
    if (cure === undefined || !doseFor(nitriteComminuted, meat, 6.25)) continue;
    const ppm = ingoingPpm({ method: 'chopped', substance: cure / 16n, greenMeat: meat });
    const { kind } = judgeConcentration([{ mass: cure, percent: 6.25 }], meat, nitriteComminuted);
    if (kind === 'met' && !('fault' in ppm)) met += 1;
  }
  return met;
}

function inPlainNumbers(): number {
  let met = 0;
  for (const meat of grams) {
    const targets = lines.map(({ percent }) => (meat * percent) / 100);
    const cure = targets[1] ?? 0;
    const most = (meat * 156.25) / 1e6 / 0.0625;
    const ppm = (cure * 0.0625 * 1e6) / meat;
    if (ppm <= 156.25 && cure <= most) met += 1;
  }
  return met;
}
