import { sayDegrees } from '../quantity/degrees';
import type { Degrees } from '../quantity/temperature';
import { sayDuration } from '../quantity/duration';
import { sayReadings } from '../thermal/curve';
import type { Finding, FindingKind } from '../thermal/finding';

const NAMES: Record<FindingKind, string> = {
  'no time': 'No time',
  'no number': 'No number',
  'open circuit': 'Open circuit: the logger had no probe',
  impossible: 'Impossible value',
  'other unit': 'Likely read in the other unit',
  'not of the core': 'Said not to be of the core',
  'in the future': 'Dated later than it was kept',
  'out of order': 'Came after a later one',
  'clock reset': 'The clock was reset',
  'an hour off': 'The clock is an hour off',
  repeated: 'The same reading twice',
  'two values': 'Two values of one instant',
  gap: 'Gap without a reading',
  spike: 'Impossible jump: far from both neighbours, which agree',
  'rises faster than the piece can': 'Rises faster than the core of the piece can',
  'falls faster than the piece can': 'Falls faster than the core of the piece can',
  'goes on from what was not of the core': 'Goes on from a reading that was not of the core',
  'power-up': 'What a probe shows before it has measured',
  'hotter than a core': 'Hotter than a moist core gets',
  flat: 'The same value for long',
};

/** "Gap without a reading, 2 h 10 min: 120 °F, then 45 °F" */
export function sayFinding({ kind, from, to, readings, values: [first, last] }: Finding): string {
  const time = to - from > 0 ? `, ${sayDuration(to - from)}` : '';
  const isSayable = (value: Degrees | undefined): value is Degrees => Number.isFinite(value?.hundredths);
  const said = [first, last].filter(isSayable).map(sayDegrees);
  const values = [...new Set(said)].join(', then ') || sayReadings(readings);
  return `${NAMES[kind]}${time}: ${values}`;
}
