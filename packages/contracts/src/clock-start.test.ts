import type { CriticalLimit } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { clockStart, lacksChillStart, lacksFreezingStart, startedBy, startsAt } from './clock-start';
import type { ControlPoint } from './plan';

const source = { citation: 'example for tests', edition: '', confirmed: false };
const moment: CriticalLimit = { kind: 'attestation', statement: 'It begins.', asks: 'moment', source };
const cooling: CriticalLimit = { kind: 'cooling', stages: [], startWithinSeconds: 5400, longestGapSeconds: 900, source };
const point = (controlPointId: string, takenAs: ControlPoint['takenAs'], limit: CriticalLimit, follows?: string) =>
  ({ controlPointId, name: controlPointId, takenAs, follows, limits: [{ limitId: 'l', limit }] }) as unknown as ControlPoint;

const cook = point('Cook', 'curve', { ...cooling, startWithinSeconds: undefined });
const into = point('Into the chiller', 'attestation', moment, 'Cook');
const chill = point('Chill', 'curve', cooling, 'Into the chiller');
const hung = point('Hung', 'attestation', moment);
const fermentation = point('Fermentation', 'curve', { ...cooling, startWithinSeconds: undefined }, 'Hung');
const direct = { ...chill, follows: 'Cook' };
const points = [cook, into, chill, hung, fermentation];

test('a chill that follows its cook starts with its end', () => {
  expect(clockStart(direct, points)).toEqual({ stage: cook });
  expect(startsAt({ stage: cook }, 10, [])).toEqual({ startAt: 10 });
  expect(clockStart(cook, points)).toEqual({});
  expect(clockStart({ ...chill, follows: 'gone' }, points)).toEqual({});
});

test('one that follows what asks when chilling began starts with the end of the cook all the same', () => {
  expect(clockStart(chill, points)).toEqual({ stage: cook, answer: into });
  const answers = [{ at: 30 }, { at: 20 }];
  expect(startsAt({ stage: cook, answer: into }, 10, answers)).toEqual({
    startAt: 10,
    chillingBegan: { askedAt: 'Into the chiller', answers },
  });
  // The answer never stands for an end of cooking that nobody recorded.
  expect(startsAt({ stage: cook, answer: into }, undefined, answers).startAt).toBeUndefined();
});

test('a fermentation starts with the earliest answer', () => {
  expect(clockStart(fermentation, points)).toEqual({ answer: hung });
  expect(startsAt({ answer: hung }, undefined, [{ at: 30 }, { at: 20 }])).toEqual({ startAt: 20 });
  expect(startsAt({ answer: hung }, undefined, [])).toEqual({ startAt: undefined });
});

test('the end of a cook and an answer each judge the chill behind them anew', () => {
  expect(startedBy('Cook', points)).toEqual([chill]);
  expect(startedBy('Into the chiller', points)).toEqual([chill]);
  expect(startedBy('Hung', points)).toEqual([fermentation]);
  expect(startedBy('Chill', points)).toEqual([]);
});

test('a chill that has to begin in time lacks its start where nothing asks for it', () => {
  expect(lacksChillStart(chill, points)).toBe(false);
  expect(lacksChillStart(direct, points)).toBe(true);
  expect(lacksChillStart(cook, points)).toBe(false);
});

test('freezing by the air is counted from when the meat went in, freezing by the centre is not', () => {
  const by = (read: Extract<CriticalLimit, { kind: 'freezing' }>['read'], follows?: string) =>
    point('Freezer', 'curve', { kind: 'freezing', read, longestGapSeconds: 7200, source }, follows);
  const air = { what: 'freezer', thickness: { value: 6, unit: 'in' } } as const;
  expect(lacksFreezingStart(by(air), points)).toBe(true);
  expect(lacksFreezingStart(by(air, 'gone'), points)).toBe(true);
  expect(lacksFreezingStart(by(air, 'Hung'), points)).toBe(false);
  expect(lacksFreezingStart(by(air, 'Chill'), points)).toBe(false);
  expect(lacksFreezingStart(by({ what: 'centre' }), points)).toBe(false);
  expect(lacksFreezingStart(chill, points)).toBe(false);
});
