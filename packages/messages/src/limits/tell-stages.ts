import {
  millisecondsOf,
  printedIn,
  timeOf,
  type BandTimeLimit,
  type CoolingLimit,
  type DwellLimit,
  type DwellRow,
  type PrintedTemperature,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { writeSpan } from '../figures/write-span';
import type { LimitVoice } from './limit-voice';

/** A longer table is told by its first and last row. */
const ROWS_TOLD = 3;

const timeIn = (seconds: number) => timeOf(millisecondsOf(seconds));

/** "145 °F for 4 min", "158 °F, no holding time" */
export const tellRow = ({ at, seconds }: DwellRow, unit: TemperatureUnit, { say }: LimitVoice): string =>
  seconds === 0 ? say('row-at-once', { at: printedIn(at, unit) }) : say('row-held', { at: printedIn(at, unit), time: timeIn(seconds) });

export function tellDwell({ rows }: DwellLimit, unit: TemperatureUnit, voice: LimitVoice): string {
  const said = rows.map((row) => tellRow(row, unit, voice));
  const [first, last] = [said[0], said.at(-1)];
  if (first === undefined || last === undefined) return voice.say('no-row');
  return said.length > ROWS_TOLD ? voice.say('row-of-table', { first, last }) : anyRow(said, voice);
}

/** Any one row is enough. */
export const anyRow = (rows: readonly string[], { say }: LimitVoice): string =>
  rows.reduce((before, row) => say('row-or', { rows: before, row }));

/** "130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h" */
export function tellCooling({ stages, startWithinSeconds }: CoolingLimit, unit: TemperatureUnit, voice: LimitVoice): string {
  const { say } = voice;
  const said = stages.reduce((before, { from, to, withinSeconds, counted }) => {
    const isInAll = counted === 'start' && before !== '';
    const stage = spanOf(isInAll ? stages[0]?.from : from, to, unit, voice);
    const time = timeIn(withinSeconds);
    if (before === '') return say('stage-within', { stage, time });
    return isInAll ? say('stage-in-all', { before, stage, time }) : say('stage-then', { before, stage, time });
  }, '');
  return startWithinSeconds === undefined ? said : say('begun-within', { time: timeIn(startWithinSeconds), stages: said });
}

export const tellBandTime = ({ from, to, maxSeconds }: BandTimeLimit, unit: TemperatureUnit, voice: LimitVoice): string =>
  voice.say('band-within', { band: spanOf(from, to, unit, voice), time: timeIn(maxSeconds) });

/** "130 → 80 °F", "end of cooking → 46.4 °F" */
function spanOf(from: PrintedTemperature | undefined, to: PrintedTemperature, unit: TemperatureUnit, { say, locale }: LimitVoice): string {
  const end = printedIn(to, unit);
  return from ? writeSpan({ from: printedIn(from, unit), to: end }, locale) : say('end-of-cooking-to', { to: end });
}
