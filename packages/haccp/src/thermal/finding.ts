import type { Degrees } from '../quantity/temperature';
import type { ClockDoubt } from './clock-doubt';
import type { Doubt } from './doubt';
import type { CurveReading } from './instant';

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

/** Nothing is ever replaced by another value. */
export type Treatment = 'left out' | 'nothing is met with it' | 'counts only against the lot' | 'used as it is';

export type Finding = {
  kind: FindingKind;
  probe?: string;
  /** Epoch ms; not finite where there is no time. */
  from: number;
  to: number;
  readings: number;
  /** A person names readings by them. */
  ids?: string[];
  /** As they came; for a too fast move, the last one before it. */
  values: [first: Degrees | undefined, last: Degrees | undefined];
  treatment: Treatment;
};

const LEFT_OUT: Treatment = 'left out';
/** Until a person settles it. */
const NEVER_MET: Treatment = 'nothing is met with it';
const AGAINST: Treatment = 'counts only against the lot';
const USED: Treatment = 'used as it is';

export const isDoubted = ({ treatment }: Pick<Finding, 'treatment'>): boolean => treatment === NEVER_MET || treatment === AGAINST;

const TREATED: Record<FindingKind, Treatment> = {
  'no time': LEFT_OUT,
  'no number': LEFT_OUT,
  'open circuit': LEFT_OUT,
  impossible: LEFT_OUT,
  'other unit': AGAINST,
  'not of the core': LEFT_OUT,
  'in the future': NEVER_MET,
  'out of order': NEVER_MET,
  'clock reset': NEVER_MET,
  'an hour off': NEVER_MET,
  repeated: LEFT_OUT,
  'two values': USED,
  gap: USED,
  spike: AGAINST,
  'rises faster than the piece can': NEVER_MET,
  'falls faster than the piece can': NEVER_MET,
  'goes on from what was not of the core': AGAINST,
  'power-up': AGAINST,
  'hotter than a core': AGAINST,
  flat: USED,
};

export type Noted = Pick<CurveReading, 'at' | 'id' | 'probe'> & { temperature?: Degrees };

/** Joins the finding before it when the kind is the same and it goes on. */
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
  const isMove = kind === 'rises faster than the piece can' || kind === 'falls faster than the piece can';
  const values: Finding['values'] = [(isMove ? movedFrom : undefined) ?? since?.temperature, reading?.temperature];
  const probe = reading?.probe;
  const count = since === reading ? 1 : 2;
  const ids = reading?.id === undefined ? undefined : [reading.id];
  findings.push({ kind, probe, from: since?.at ?? NaN, to: at, readings: count, ids, values, treatment: TREATED[kind] });
}
