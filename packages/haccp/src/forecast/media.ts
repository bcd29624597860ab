import { isUsableReading, type CurveReading } from '../thermal/curve';
import { celsiusOf, type Medium } from './course';

/** A medium, and the instant (epoch ms) from which it was that. */
export type MediumFrom = { from: number; medium: Medium };

/**
 * So far apart (°C) two readings may be of one medium: each is good to 2 °C, and the air of a chiller swings as it
 * starts and stops. Common practice, no source.
 */
const SWING = 4;

/**
 * What was read of the surroundings, as the media one after the other: a reading farther than 4 °C from the first of
 * its medium is of another. The latest reading of each stands for all of it.
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
