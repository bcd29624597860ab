import type { CriticalLimit } from '@larderbook/haccp';
import type { TakenAs } from '../document/plan-words';

export type LimitKind = CriticalLimit['kind'];

export const limitKindWords: Record<LimitKind, { name: string; detail: string }> = {
  range: { name: 'A value within bounds', detail: 'a temperature, pH, water activity or percentage' },
  concentration: { name: 'Ingoing concentration', detail: 'ppm on the meat block, from the weighings' },
  dwell: { name: 'Time held at a temperature', detail: 'a table of temperatures and times; one row is enough' },
  cooling: { name: 'Cooling in stages', detail: 'from one temperature to another, in so much time' },
  bandTime: { name: 'Time between two temperatures', detail: 'at most so long in all, as while warming up' },
  attestation: { name: 'A statement', detail: 'confirmed with what was seen' },
};

/** The kinds of limit that can be judged from what is recorded at a control point. */
export const kindsOf: Record<TakenAs, LimitKind[]> = {
  value: ['range'],
  curve: ['dwell', 'cooling', 'bandTime'],
  weighings: ['concentration'],
  attestation: ['attestation'],
};
