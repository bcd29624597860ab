import { isUsableReading, type CurveReading } from '../thermal/curve';
import { celsiusOf, type Medium } from './course';

/** `from` in epoch ms. */
export type MediumFrom = { from: number; medium: Medium };

/**
 * °C between readings of one medium: each is good to 2 °C, and chiller air swings as it starts and stops. Common
 * practice, no source.
 */
const SWING = 4;

/**
 * A reading farther than 4 °C from the first of its medium begins another. The latest reading stands for the whole
 * medium.
 */
export function mediaOf(readings: readonly CurveReading[]): MediumFrom[] {
  const runs: CurveReading[][] = [];
  for (const reading of readings.filter(isUsableReading).sort((a, b) => a.at - b.at)) {
    const run = runs[runs.length - 1];
    if (run && Math.abs(celsiusAt(reading) - celsiusAt(run[0] as CurveReading)) <= SWING) run.push(reading);
    else runs.push([reading]);
  }
  return runs.map((run) => {
    const all = run.map(celsiusAt);
    const temperature = (run[run.length - 1] as CurveReading).temperature;
    const between = [Math.min(...all), Math.max(...all)] as const;
    return { from: (run[0] as CurveReading).at, medium: { temperature, is: 'measured', between } };
  });
}

const celsiusAt = ({ temperature }: CurveReading): number => celsiusOf(temperature);
