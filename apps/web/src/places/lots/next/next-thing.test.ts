import type { Lot } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { aLot, aReading, aTarget, at, ms } from '../test-lots/a-lot';
import { aJudged, aPoint, cooling, dwell, labelRight, nitrite } from '../test-lots/a-point';
import { nextThing } from './next-thing';

const due = (deadline?: string) => [
  aJudged(cooling, {
    kind: 'undetermined',
    running: { code: 'cooling', figures: { stage: '130 → 80 °F', to: '80 °F' }, deadline: deadline ? ms(deadline) : undefined },
  }),
];
const cook = { name: 'Cook', takenAs: 'curve' as const, limits: [dwell] };
const chill = { name: 'Chill', takenAs: 'curve' as const, limits: [cooling] };
const into = { name: 'Into the chiller', takenAs: 'attestation' as const, limits: [{ ...labelRight, asks: 'moment' as const }] };
const chillAfter = { ...chill, follows: aPoint(into).controlPoint.controlPointId };
const chilling = aPoint(chillAfter, { stands: 'running', readings: [aReading('12:00', 150)], judged: due('13:30') });
const label = { name: 'Label', takenAs: 'attestation' as const, limits: [labelRight] };
const weighed = [aTarget('Pork', { part: 'meat', weighedGrams: 22_000 }), aTarget('Salt', { weighedGrams: 400 })];
const meatIn: Partial<Lot> = { meatBlockGrams: 22_000, targets: weighed };
const deviation = { deviationId: 'd', number: 4, description: [], open: true, openedAt: at('11:00') };

test.each<[string, Partial<Lot>, object]>([
  ['no meat is in', {}, { do: 'put in meat' }],
  [
    'one of two kinds of meat is in',
    { meatBlockGrams: 9000, targets: [aTarget('Beef', { part: 'meat' })] },
    { do: 'put in meat', target: { itemName: 'Beef' } },
  ],
  [
    'an ingredient is not weighed',
    { ...meatIn, targets: [...weighed, aTarget('Pepper')] },
    { do: 'weigh', target: { itemName: 'Pepper' } },
  ],
  [
    'less curing salt than the least allowed is in',
    { ...meatIn, targets: [...weighed, aTarget('Curing salt 6.25 %', { weighedGrams: 30, minGrams: 42 })] },
    { do: 'weigh', target: { itemName: 'Curing salt 6.25 %' } },
  ],
  ['the cook has not begun', { ...meatIn, controlPoints: [aPoint(cook)] }, { do: 'record', point: { controlPoint: { name: 'Cook' } } }],
  [
    'the cook runs',
    { ...meatIn, controlPoints: [aPoint(cook, { stands: 'running', readings: [aReading('10:00', 120)] })] },
    { do: 'record', point: { controlPoint: { name: 'Cook' } } },
  ],
  [
    'a chill runs, and nobody has said when it began',
    { ...meatIn, controlPoints: [chilling, aPoint(into)] },
    { do: 'record', point: { controlPoint: { name: 'Into the chiller' } } },
  ],
  [
    'a chill runs, and its start is answered',
    { ...meatIn, controlPoints: [chilling, aPoint(into, { stands: 'met' })] },
    { do: 'record', point: { controlPoint: { name: 'Chill' } } },
  ],
  [
    'the cook has all it needs',
    {
      ...meatIn,
      controlPoints: [aPoint(cook, { stands: 'met', readings: [aReading('10:00', 150)], judged: [aJudged(dwell)] })],
    },
    { do: 'finish', point: { controlPoint: { name: 'Cook' } } },
  ],
  [
    'the cook is finished',
    {
      ...meatIn,
      controlPoints: [aPoint(cook, { stands: 'met', readings: [aReading('10:00', 150)], endedAt: at('11:00') }), aPoint(label)],
    },
    { do: 'record', point: { controlPoint: { name: 'Label' } } },
  ],
  [
    'what could not be judged was dealt with',
    { ...meatIn, controlPoints: [aPoint(label, { stands: 'undetermined', settled: true })] },
    { do: 'pack' },
  ],
  [
    'the plan limits a substance that the formula does not have',
    {
      ...meatIn,
      controlPoints: [aPoint({ name: 'Cure', takenAs: 'weighings', limits: [nitrite] }), aPoint(label, { stands: 'met' })],
    },
    { do: 'record', point: { controlPoint: { name: 'Cure' } } },
  ],
  ['all is recorded', { ...meatIn, controlPoints: [aPoint(label, { stands: 'met' })] }, { do: 'pack' }],
  ['it is packed', { ...meatIn, packages: 40, standing: 'to-review' }, { do: 'review' }],
  ['it is cleared', { ...meatIn, packages: 40, standing: 'cleared' }, { do: 'ship' }],
  ['nothing is left of it', { standing: 'ended' }, { do: 'nothing' }],
])('when %s', (_case, parts, next) => {
  expect(nextThing(aLot(parts))).toMatchObject(next);
});

test('a deviation comes before the work, but not before a chill whose time is running', () => {
  const onHold = { ...meatIn, standing: 'on-hold' as const, deviations: [deviation] };
  const chilling = aPoint(chill, { stands: 'running', readings: [aReading('12:00', 140)], judged: due('13:30') });
  expect(nextThing(aLot({ ...onHold, controlPoints: [aPoint(label)] }))).toMatchObject({ do: 'settle', number: 4 });
  expect(nextThing(aLot({ ...onHold, controlPoints: [chilling] }))).toMatchObject({
    do: 'record',
    point: { controlPoint: { name: 'Chill' } },
  });
});

test('a stage that is missed and has no bound left to reach gives way to its deviation', () => {
  const missed = aPoint(cook, { stands: 'missed', readings: [aReading('10:00', 120)], openDeviationId: 'd' });
  const lot = aLot({ ...meatIn, standing: 'on-hold', deviations: [deviation], controlPoints: [missed] });
  expect(nextThing(lot)).toMatchObject({ do: 'settle' });
});

test('of two running stages the one that is due first comes first', () => {
  const running = (name: string, deadline?: string) =>
    aPoint({ name, takenAs: 'curve', limits: [cooling] }, { stands: 'running', readings: [aReading('12:00', 140)], judged: due(deadline) });
  const lot = aLot({
    ...meatIn,
    controlPoints: [running('Smoke'), running('Chill B', '15:00'), running('Chill A', '13:30')],
  });
  expect(nextThing(lot)).toMatchObject({ point: { controlPoint: { name: 'Chill A' } } });
});
