import {
  differencesOf,
  millisecondsOf,
  printedIn,
  timeOf,
  type Difference,
  type LimitRow,
  type PrintedTemperature,
  type Quantity,
} from '@larderbook/haccp';
import type { Reasons } from './reasons-in';

/** Only the first difference; undefined when both print the same. */
export function otherwise(row: LimitRow, match: LimitRow, edition: string, reasons: Reasons): string | undefined {
  const first = differencesOf(row, match).find(({ what }) => what !== 'known' && what !== 'force');
  return first && sayOtherwise(first, edition, match.limit.source.confirmed ? '' : '-doubt', reasons);
}

function sayOtherwise(difference: Difference, edition: string, doubt: '' | '-doubt', { say, limits }: Reasons): string | undefined {
  if (difference.what === 'conditions') return say(`other-conditions${doubt}`, { edition });
  if (difference.what === 'figure') {
    const printed = (limit: LimitRow['limit']) => limits.formatPrinted(limit).join('; ');
    return say(`other-figure${doubt}`, { edition, here: printed(difference.here), there: printed(difference.there) });
  }
  if (difference.what !== 'time') return undefined;
  const [at, here, there] = [temperatureOf(difference.at), timeHeld(difference.here, say), timeHeld(difference.there, say)];
  if (there === undefined) return say(`no-row${doubt}`, { edition, at });
  return here === undefined ? say(`row-added${doubt}`, { edition, at, there }) : say(`other-time${doubt}`, { edition, at, here, there });
}

/** Uses the unit that the table is printed in. */
export const temperatureOf = (at: PrintedTemperature): Quantity => printedIn(at, at['°F'] === undefined ? '°C' : '°F');

/** Undefined where there is no row. */
export function timeHeld(seconds: number | undefined, say: Reasons['say']): Quantity | string | undefined {
  if (seconds === undefined) return undefined;
  return seconds === 0 ? say('no-holding-time') : timeOf(millisecondsOf(seconds));
}
