import type { Degrees } from '../quantity/temperature';
import type { Doubt } from './doubt';
import type { CurveReading } from './instant';

/** What can be wrong with a series as it came from a hand or a logger. */
export type FindingKind =
  | Doubt
  | 'no time'
  | 'no number'
  | 'open circuit'
  | 'impossible'
  | 'other unit'
  | 'out of order'
  | 'clock reset'
  | 'an hour off'
  | 'repeated'
  | 'two values'
  | 'gap'
  | 'flat';

/** What the judges do with it. Nothing is ever replaced by another value. */
export type Treatment = 'left out' | 'counts only against the lot' | 'used as it is';

/** One thing found, over one stretch of the series. */
export type Finding = {
  kind: FindingKind;
  probe?: string;
  /** First and last instant concerned (epoch ms; not finite where there is no time). */
  from: number;
  to: number;
  readings: number;
  /** The first and the last value concerned, as they came. */
  values: [first: Degrees | undefined, last: Degrees | undefined];
  treatment: Treatment;
  whatToDo: string;
};

const LEFT_OUT: Treatment = 'left out';
const AGAINST: Treatment = 'counts only against the lot';
const USED: Treatment = 'used as it is';

const ABOUT: Record<FindingKind, [Treatment, string]> = {
  'no time': [LEFT_OUT, 'Add the reading again with its time.'],
  'no number': [LEFT_OUT, 'Check the probe and its plug; a gap is left.'],
  'open circuit': [LEFT_OUT, 'Check the probe and its plug: this is what a logger writes without one. A gap is left.'],
  impossible: [LEFT_OUT, 'Check the decimal point and the unit, and read again. A gap is left.'],
  'other unit': [AGAINST, 'Ask whoever read it: in the other unit the number would fit its neighbours.'],
  'out of order': [USED, 'It is sorted by time. Check the clock of the logger before relying on it.'],
  'clock reset': [USED, 'The logger lost its time: read it again with its clock set, or hold the lot.'],
  'an hour off': [USED, 'The clock was changed by an hour: use one without summer time, and amend the times.'],
  repeated: [LEFT_OUT, 'Nothing: the same reading twice counts once.'],
  'two values': [USED, 'One instant with two values: the worse is taken. Find out which probe was read.'],
  gap: [USED, 'Add the readings in between from the logger; a gap can only count against the lot.'],
  spike: [AGAINST, 'Check whether the probe was handled; amend the reading if it is wrong.'],
  'out of the product': [AGAINST, 'Check whether the probe was out of the product, put it back and read again.'],
  'power-up': [AGAINST, 'Wait until the probe has settled, then read again.'],
  'hotter than a core': [AGAINST, 'A moist core does not get so hot: was it read in °F?'],
  flat: [USED, 'The same value for so long is a hold or a dead probe: check that it still moves.'],
};

/** Takes one reading into the finding before it when that is of the same kind and goes on, or begins a new one. */
export function note(
  findings: Finding[],
  kind: FindingKind,
  reading: CurveReading,
  since = reading,
  goesOn = true,
): void {
  const last = findings[findings.length - 1];
  const at = reading?.at ?? NaN;
  if (goesOn && last?.kind === kind) {
    last.to = at;
    last.readings += 1;
    last.values[1] = reading?.temperature;
    return;
  }
  const [treatment, whatToDo] = ABOUT[kind];
  const values: Finding['values'] = [since?.temperature, reading?.temperature];
  const probe = reading?.probe;
  const count = since === reading ? 1 : 2;
  findings.push({ kind, probe, from: since?.at ?? NaN, to: at, readings: count, values, treatment, whatToDo });
}
