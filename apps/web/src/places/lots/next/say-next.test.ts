import { expect, test } from 'vitest';
import { aReading, aTarget, ms } from '../test-lots/a-lot';
import { aJudged, aPoint, cooling } from '../test-lots/a-point';
import { inEnglish } from '../../../ui/in-english.test-data';
import { sayNext, sayTarget } from './say-next';
import { tell } from '../../../ui/tell-here.test-data';

const say = inEnglish('lots');

const chill = { name: 'Chill', takenAs: 'curve' as const, limits: [cooling] };

test('a weighing names its target, what is in already, and the least and most allowed, rounded inward', () => {
  const cure = aTarget('Curing salt 6.25 %', { targetGrams: 56.699, weighedGrams: 20, minGrams: 43.545, maxGrams: 56.699 });
  expect(sayNext({ do: 'weigh', target: cure }, 'metric', say, tell)).toMatchObject({
    title: 'Weigh: Curing salt 6.25 %',
    detail: 'Target 56.6 g · 20 g is in · least 43.6 g, most 56.6 g',
  });
});

test('an ingredient without figures says nothing of them', () => {
  expect(sayTarget(aTarget('Water', { targetGrams: undefined }), 'metric', say)).toBe('');
});

test('of a stage with two running bounds the one that is due first is named', () => {
  const running = (bound: string, deadline?: number) =>
    aJudged(cooling, { kind: 'undetermined', running: { code: 'cooling', figures: { stage: bound, to: bound }, deadline } });
  const point = aPoint(chill, {
    readings: [aReading('12:00', 128)],
    judged: [running('40 °F', ms('18:00')), running('80 °F', ms('13:30'))],
  });
  expect(sayNext({ do: 'record', point }, 'US', say, tell)).toEqual({
    title: 'Chill: 80 °F to be reached',
    action: 'Next reading',
  });
});

test('of an open deviation only what to do is said: what was missed stands above it, with the state of the lot', () => {
  expect(sayNext({ do: 'settle', deviationId: 'd', number: 4 }, 'US', say, tell)).toEqual({
    title: 'Deal with deviation 4',
    action: 'Record the corrective action',
  });
});

test('a control point at which nothing was read says what to measure', () => {
  expect(sayNext({ do: 'record', point: aPoint(chill) }, 'US', say, tell)).toMatchObject({
    title: 'Chill',
    detail: 'Core temperature',
    action: 'Record',
  });
});
