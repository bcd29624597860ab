import { expect, test } from 'vitest';
import { aLot, aReading, at, aTarget, aWeighing, ms, weight } from '../test-lots/a-lot';
import { aPoint, coldRoom, cooling, dwell, labelRight, nitrite } from '../test-lots/a-point';
import { previewEndOf, previewReadingOf } from './preview-curve';
import { previewAnswer, previewValue } from './preview-value';
import { previewWeighing } from './preview-weighing';

const cook = { name: 'Cook', takenAs: 'curve' as const, limits: [dwell] };
const chill = {
  name: 'Chill',
  takenAs: 'curve' as const,
  limits: [cooling],
  follows: aPoint(cook).controlPoint.controlPointId,
};
const degreesAt = (wall: string, value: number, probe = '') => ({ value, unit: '°F' as const, at: ms(wall), probe });

test('a reading that completes the hold is seen to meet the limit before it is kept', () => {
  const point = aPoint(cook, { readings: [aReading('10:00', 146)] });
  expect(previewReadingOf(point, aLot(), degreesAt('10:03', 146))).toMatchObject([{ kind: 'undetermined' }]);
  expect(previewReadingOf(point, aLot(), degreesAt('10:04', 146))).toMatchObject([{ kind: 'met' }]);
});

test('finishing a cook too early is seen to miss the limit before it is said', () => {
  expect(previewEndOf(aPoint(cook, { readings: [aReading('10:00', 140), aReading('10:10', 143)] }), aLot())).toMatchObject([
    { kind: 'missed' },
  ]);
});

test('that chilling began is shown on the device by the answer that counts, kept or not yet sent', () => {
  const limit = {
    ...cooling,
    stages: [{ from: { '°F': 12_000 }, to: { '°F': 5500 }, withinSeconds: 21_600, counted: 'stage' as const }],
    startWithinSeconds: 5400,
    longestGapSeconds: 18_000,
  };
  const into = {
    name: 'Into',
    takenAs: 'attestation' as const,
    limits: [{ ...labelRight, asks: 'moment' as const }],
    follows: chill.follows,
  };
  const point = aPoint(
    { ...chill, limits: [limit], follows: aPoint(into).controlPoint.controlPointId },
    { readings: [aReading('10:05', 150), aReading('11:40', 119), aReading('16:00', 55)] },
  );
  const byAnswers = (...readings: ReturnType<typeof aReading>[]) =>
    previewEndOf(point, aLot({ controlPoints: [aPoint(cook, { endedAt: at('10:00') }), aPoint(into, { readings }), point] }))[0]?.kind;
  const answered = (wall: string, more: object = {}) => aReading(wall, 0, { entered: { answer: true, seen: '' }, ...more });
  expect(byAnswers()).toBe('undetermined');
  expect(byAnswers(answered('11:00'))).toBe('met');
  expect(byAnswers(answered('11:31'))).toBe('missed');
  expect(byAnswers(answered('11:31', { amendedBy: 'x' }), answered('11:00'))).toBe('met');
  expect(byAnswers(answered('11:00', { made: { ...answered('11:00').made, recordedAt: at('10:30') } }))).toBe('undetermined');
});

test('a corrected reading no longer counts, nor does the one being corrected', () => {
  const readings = [aReading('10:00', 146), aReading('10:02', 80, { amendedBy: 'x' }), aReading('10:03', 90)];
  const [corrected] = previewReadingOf(aPoint(cook, { readings }), aLot(), degreesAt('10:04', 146), readings[2]?.readingId);
  expect(corrected).toMatchObject({ kind: 'met' });
});

test('a chill is timed from the end of its cook', () => {
  const cooked = aPoint(cook, { endedAt: at('12:00') });
  const point = aPoint(chill, { readings: [aReading('12:30', 120)] });
  const [verdict] = previewReadingOf(point, aLot({ controlPoints: [cooked, point] }), degreesAt('13:00', 100));
  expect(verdict?.running?.deadline).toBe(ms('13:30'));
});

test('a value is judged in the unit it was read in', () => {
  const point = aPoint({ name: 'Cold room', takenAs: 'value', limits: [coldRoom] }).controlPoint;
  expect(previewValue(point, 4.4, '°C')).toMatchObject([{ kind: 'met' }]);
  expect(previewValue(point, 40.1, '°F')).toMatchObject([{ kind: 'missed', figures: { by: { value: '0.1', unit: '°F' } } }]);
});

test('a yes without what was seen is not enough', () => {
  const point = aPoint({ name: 'Label', takenAs: 'attestation', limits: [labelRight] }).controlPoint;
  expect(previewAnswer(point, { holds: true, seen: '' })).toMatchObject([{ kind: 'undetermined' }]);
  expect(previewAnswer(point, { holds: true, seen: 'milk is named' })).toMatchObject([{ kind: 'met' }]);
});

test('curing salt is judged on the trimmed meat together with what was weighed before', () => {
  const target = aTarget('Curing salt 6.25 %', { substance: 'sodium nitrite' });
  const lot = aLot({
    meatBlockGrams: 10_000,
    targets: [target],
    controlPoints: [aPoint({ name: 'Cure', takenAs: 'weighings', limits: [nitrite] })],
    weighings: [
      aWeighing('08:00', {
        item: { itemId: target.itemId, name: 'Curing salt 6.25 %' },
        weight: weight(20, 'g'),
        fractionPercent: 6.25,
      }),
    ],
  });
  const preview = (grams: number) => previewWeighing(lot, { target, weight: { value: grams, unit: 'g' }, percent: 6.25 });
  expect(preview(5)).toMatchObject([{ kind: 'met', figures: { judged: { value: '156.25', unit: 'ppm' } } }]);
  expect(preview(5.1)).toMatchObject([{ kind: 'missed' }]);
  expect(previewWeighing(lot, { target, weight: { value: 25, unit: 'g' }, percent: 6.25 }, lot.weighings[0]?.weighingId)).toMatchObject([
    { kind: 'met' },
  ]);
});
