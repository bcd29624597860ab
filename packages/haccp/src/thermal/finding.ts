import type { Degrees } from '../quantity/temperature';
import type { ClockDoubt } from './clock-doubt';
import type { Doubt } from './doubt';
import type { CurveReading } from './instant';

/** What can be wrong with a series as it came from a hand or a logger. */
export type FindingKind =
  | Doubt
  | ClockDoubt
  | 'not of the core'
  | 'no time'
  | 'no number'
  | 'open circuit'
  | 'impossible'
  | 'other unit'
  | 'repeated'
  | 'two values'
  | 'gap'
  | 'flat';

/** What the judges do with it. Nothing is ever replaced by another value. */
export type Treatment = 'left out' | 'nothing is met with it' | 'counts only against the lot' | 'used as it is';

/** One thing found, over one stretch of the series. */
export type Finding = {
  kind: FindingKind;
  probe?: string;
  /** First and last instant concerned (epoch ms; not finite where there is no time). */
  from: number;
  to: number;
  readings: number;
  /** Of the readings themselves that have one, by which a person can say something of each. */
  ids?: string[];
  /** The first and the last value concerned, as they came; of what moves too fast, the last that did not. */
  values: [first: Degrees | undefined, last: Degrees | undefined];
  treatment: Treatment;
  whatToDo: string;
};

const LEFT_OUT: Treatment = 'left out';
/** Until a person has settled it. */
const NEVER_MET: Treatment = 'nothing is met with it';
const AGAINST: Treatment = 'counts only against the lot';
const USED: Treatment = 'used as it is';

/** Whether it keeps a series from being met, or may, until a person says what the readings were. */
export const isDoubted = ({ treatment }: Pick<Finding, 'treatment'>): boolean => treatment === NEVER_MET || treatment === AGAINST;

const ABOUT: Record<FindingKind, [Treatment, string]> = {
  'no time': [LEFT_OUT, 'Add the reading again with its time.'],
  'no number': [LEFT_OUT, 'Check the probe and its plug; a gap is left.'],
  'open circuit': [LEFT_OUT, 'Check the probe and its plug: this is what a logger writes without one. A gap is left.'],
  impossible: [LEFT_OUT, 'Check the decimal point and the unit, and read again. A gap is left.'],
  'other unit': [AGAINST, 'Ask whoever read it: in the other unit the number would fit its neighbours.'],
  'not of the core': [LEFT_OUT, 'Nothing: a person said so, with a reason.'],
  'in the future': [NEVER_MET, 'Correct its time. If it is right, say so and why: then the other clock was wrong.'],
  'out of order': [NEVER_MET, 'Correct its time, or say that it is right and why it came late. It is sorted by time.'],
  'clock reset': [NEVER_MET, 'The clock was lost or set anew: correct the times, or say that they are right and why.'],
  'an hour off': [NEVER_MET, 'The clock may have been changed: correct the times, or say that they are right and why.'],
  repeated: [LEFT_OUT, 'Nothing: the same reading twice counts once.'],
  'two values': [USED, 'One instant with two values: the worse is taken. Find out which probe was read.'],
  gap: [USED, 'Add the readings in between from the logger; a gap can only count against the lot.'],
  spike: [AGAINST, 'Check whether the probe was handled; amend the reading if it is wrong.'],
  'rises faster than the piece can': [NEVER_MET, 'Put the probe back into the core, and say which readings were not of it.'],
  'falls faster than the piece can': [NEVER_MET, 'Put the probe back into the core, and say which readings were not of it.'],
  'goes on from what was not of the core': [
    AGAINST,
    'Say of these too that they were not of the core; or put the probe back and read again.',
  ],
  'power-up': [AGAINST, 'Wait until the probe has settled, then read again.'],
  'hotter than a core': [AGAINST, 'A moist core does not get so hot: was it read in °F?'],
  flat: [USED, 'The same value for so long is a hold or a dead probe: check that it still moves.'],
};

/** What a finding keeps of a reading; a weight and a pH have no temperature. */
export type Noted = Pick<CurveReading, 'at' | 'id' | 'probe'> & { temperature?: Degrees };

/** Takes one reading into the finding before it when that is of the same kind and goes on, or begins a new one. */
export function note(findings: Finding[], kind: FindingKind, reading: Noted, since = reading, goesOn = true, movedFrom?: Degrees): void {
  const last = findings[findings.length - 1];
  const at = reading?.at ?? NaN;
  if (goesOn && last?.kind === kind) {
    last.to = at;
    last.readings += 1;
    last.values[1] = reading?.temperature;
    if (reading?.id !== undefined) last.ids?.push(reading.id);
    return;
  }
  const [treatment, whatToDo] = ABOUT[kind];
  const isMove = kind === 'rises faster than the piece can' || kind === 'falls faster than the piece can';
  const values: Finding['values'] = [(isMove ? movedFrom : undefined) ?? since?.temperature, reading?.temperature];
  const probe = reading?.probe;
  const count = since === reading ? 1 : 2;
  const ids = reading?.id === undefined ? undefined : [reading.id];
  findings.push({ kind, probe, from: since?.at ?? NaN, to: at, readings: count, ids, values, treatment, whatToDo });
}
