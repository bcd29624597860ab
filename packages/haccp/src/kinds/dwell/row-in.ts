import { coded } from '../../limits/coded';
import type { Phrase } from '../../limits/verdict';
import { millisecondsOf } from '../../quantity/duration';
import { printedIn, timeOf } from '../../quantity/quantities';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { DwellRow } from './dwell-limit';

/** 145 °F for 4 min, or 158 °F and no holding time. */
export function rowIn({ at, seconds }: DwellRow, unit: TemperatureUnit): Phrase {
  const figure = printedIn(at, unit);
  return (
    seconds === 0 ? coded('row-at-once', { at: figure }) : coded('row-for', { at: figure, time: timeOf(millisecondsOf(seconds)) })
  ) as Phrase;
}
