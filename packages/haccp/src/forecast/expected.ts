import { coded } from '../limits/coded';
import type { Coded, Phrase } from '../limits/verdict';
import { aboutTime } from '../quantity/quantities';
import type { Quantity } from '../quantity/quantity';

/** Epoch ms; Infinity where it may never be. */
export type Expected = {
  best: number;
  earliest: number;
  latest: number;
  lastAt: number;
  by: number | undefined;
  target: Quantity;
  way: 'cooling' | 'heating';
};

export type ExpectedState = 'on course' | 'at risk' | 'will miss' | 'expected';

/** Times count from the last reading. */
export function toldOfExpected(expected: Expected, state: ExpectedState, takeMore: boolean): { because: Coded[]; next: Coded[] } {
  const { best, earliest, latest, lastAt, by, target, way } = expected;
  const when = (instant: number) => (instant === Infinity ? { code: 'perhaps-never' } : inTime(instant - lastAt));
  const expectation =
    earliest === Infinity
      ? coded('never-in-this-medium', { target })
      : coded('expected-in', { target, best: when(best), earliest: when(earliest), latest: when(latest) });
  return { because: by === undefined ? [expectation] : [expectation, mustBeThere(by, lastAt)], next: nextOf(state, takeMore, way) };
}

const mustBeThere = (by: number, lastAt: number): Coded =>
  by > lastAt ? coded('must-be-there', { when: inTime(by - lastAt) }) : coded('must-be-there-already');

function inTime(milliseconds: number): Phrase {
  const { code, figures } = aboutTime(milliseconds);
  return figures ? { code: `in-${code}`, figures } : { code: `in-${code}` };
}

function nextOf(state: ExpectedState, takeMore: boolean, way: Expected['way']): Coded[] {
  const act = state === 'will miss' || state === 'at risk' ? [coded(way === 'cooling' ? 'cool-faster' : 'check-heat-and-load')] : [];
  return takeMore ? [...act, coded('take-more-readings')] : act;
}
