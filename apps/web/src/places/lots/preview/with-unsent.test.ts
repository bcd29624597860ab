import { expect, test } from 'vitest';
import type { Entry } from '../../../outbox/entry';
import { aLot, anInput, aReading, at, aTarget, ms, weight } from '../test-lots/a-lot';
import { aPoint, dwell, nitrite } from '../test-lots/a-point';
import { ids } from '../test-lots/ids';
import { previewReadingOf } from './preview-curve';
import { previewWeighing } from './preview-weighing';
import { withUnsent } from './with-unsent';

const cook = aPoint({ name: 'Cook', takenAs: 'curve', limits: [dwell] });
const { controlPointId } = cook.controlPoint;
const lot = aLot({ controlPoints: [cook] });

const kept = (kind: string, wall: string, body: object): Entry => {
  const id = ids.of(`${kind} ${wall}`);
  const whole = { lotId: lot.lotId, takenAt: at(wall), ...body };
  return {
    id,
    method: 'PUT',
    path: `/${kind}/${id}`,
    body: whole,
    what: '',
    establishmentId: '',
    personId: '',
    takenAt: at(wall),
    state: 'waiting',
    failures: 0,
  };
};
const reading = (wall: string, value: number, more = {}) =>
  kept('readings', wall, { controlPointId, entered: { value, unit: '°F' }, ...more });
const preview = (entries: Entry[]) => {
  const all = withUnsent(lot, entries);
  const [point] = all.controlPoints;
  return point && previewReadingOf(point, all, { value: 146, unit: '°F', at: ms('10:05'), probe: '' })[0]?.kind;
};

test('without a signal a reading is judged together with those that wait on this device', () => {
  expect(preview([])).toBe('undetermined');
  expect(preview([reading('10:00', 146)])).toBe('met');
});

test('a correction that waits replaces what it corrects', () => {
  expect(
    preview([
      reading('10:00', 146),
      reading('10:03', 90),
      reading('10:03', 146, { amends: ids.of('readings 10:03'), reason: 'typed wrongly' }),
    ]),
  ).toBe('met');
});

test('what was said of a reading without a signal counts, and so does taking it back', () => {
  const [first, hot] = [reading('10:00', 146), reading('10:03', 120)];
  const say = (wall: string, word: string) =>
    kept('clarifications', wall, { controlPointId, readingIds: [hot.id], word, reason: 'Probe in the air' });
  expect(preview([first, hot])).not.toBe('met');
  expect(preview([first, hot, say('10:04', 'not of the core')])).toBe('met');
  expect(preview([first, hot, say('10:04', 'not of the core'), say('10:05', 'as recorded')])).not.toBe('met');
  expect(withUnsent(lot, [kept('clarifications', '10:04', { word: 'fine' })])).toEqual(lot);
});

test('what the server refused is not counted in, nor what belongs to another lot', () => {
  const waiting = reading('10:00', 146);
  expect(preview([{ ...waiting, state: 'parked' }])).toBe('undetermined');
  expect(preview([{ ...waiting, body: { ...waiting.body, lotId: ids.of('another lot') } }])).toBe('undetermined');
});

test('a stage that was finished without a signal is finished', () => {
  expect(withUnsent(lot, [kept('stage-ends', '11:00', { controlPointId })]).controlPoints[0]?.endedAt).toBe(at('11:00'));
});

test('cure that was weighed without a signal counts, so that nobody weighs it twice unseen', () => {
  const target = aTarget('Curing salt 6.25 %', { substance: 'sodium nitrite' });
  const curing = aLot({
    meatBlockGrams: 10_000,
    targets: [target],
    controlPoints: [aPoint({ name: 'Cure', takenAs: 'weighings', limits: [nitrite] })],
  });
  const waiting = kept('weighings', '08:00', { itemId: target.itemId, weight: { value: 20, unit: 'g' } });
  expect(previewWeighing(withUnsent(curing, [waiting]), { target, weight: { value: 10, unit: 'g' }, percent: 6.25 })).toMatchObject([
    { kind: 'missed' },
  ]);
});

test('an entry of an older version that no longer reads is left to the server', () => {
  expect(withUnsent(lot, [kept('readings', '10:00', { entered: 'hot' })])).toEqual(lot);
});

const voided = (amends: string, wall = '10:04'): Entry => ({
  ...kept('voids', wall, {}),
  body: { what: 'reading', amends, reason: 'It never happened' },
});

test('a void that waits takes what it names out, kept or sent before', () => {
  const [first, cold] = [reading('10:00', 146), reading('10:03', 90)];
  expect(preview([first, cold])).not.toBe('met');
  expect(preview([first, cold, voided(cold.id)])).toBe('met');
  const sent = aLot({ controlPoints: [{ ...cook, readings: [aReading('10:03', 90)] }] });
  const [point] = withUnsent(sent, [voided(ids.of('reading 10:03 90'))]).controlPoints;
  expect(point?.readings).toMatchObject([{ amendedBy: ids.of('voids 10:04') }]);
});

test('meat that waits counts in the meat block, and nothing reckoned for less of it stands', () => {
  const target = aTarget('Curing salt 6.25 %', { substance: 'sodium nitrite', maxGrams: 25 });
  const half = aLot({
    meatBlockGrams: 5_000,
    inputs: [anInput('07:30', { trimmed: weight(5, 'kg') })],
    targets: [target],
    controlPoints: [aPoint({ name: 'Cure', takenAs: 'weighings', limits: [nitrite] })],
  });
  const more = kept('inputs', '07:45', {
    receiptId: ids.of('receipt'),
    weight: { value: 5, unit: 'kg' },
    trimmed: { value: 5, unit: 'kg' },
  });
  const cure = { target, weight: { value: 20, unit: 'g' as const }, percent: 6.25 };
  expect(previewWeighing(half, cure)).toMatchObject([{ kind: 'missed' }]);
  const whole = withUnsent(half, [more]);
  expect(whole.meatBlockGrams).toBe(10_000);
  expect(whole.targets[0]?.maxGrams).toBeUndefined();
  expect(previewWeighing(whole, cure)).toMatchObject([{ kind: 'met' }]);
  expect(withUnsent(half, [more, voided(more.id)]).meatBlockGrams).toBe(5_000);
});
