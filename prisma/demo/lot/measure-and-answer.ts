import { asksForHumidity, recordsMoment, type ControlPoint } from '@larderbook/contracts';
import type { HumidityKept } from '@larderbook/haccp';
import { minutesAfter } from '../story';
import type { DayOfALot } from './day-of-a-lot';
import type { Entered, LotBeingMade } from './lot-being-made';
import { settle } from './settle';
import { rollOfTheStew } from './what-was-done';

type Value = Extract<Entered, { value: number }>;

/** Whatever is asked for once: a value well within its limit, or a yes with what was seen. The moment after the last. */
export function measureAndAnswer(lot: LotBeingMade, begin: Date, valueAt: (point: ControlPoint) => Value = () => coldEnough(lot)): Date {
  let at = begin;
  for (const point of lot.controlPoints.filter(isAskedLast)) {
    if (point.takenAs === 'value') {
      at = measure(lot, point, at, valueAt);
    } else at = answerForLabel(lot, point, at);
    at = minutesAfter(at, lot.chance.between(2, 5));
  }
  return at;
}

/** As often as the plan has it in a lot. */
function measure(lot: LotBeingMade, point: ControlPoint, begin: Date, valueAt: (point: ControlPoint) => Value): Date {
  const times = point.frequency && 'timesInALot' in point.frequency ? point.frequency.timesInALot : 1;
  let at = begin;
  for (let time = 0; time < times; time += 1) {
    const value = valueAt(point);
    lot.read(point, at, value, { instrument: instrumentFor[value.unit] });
    at = minutesAfter(at, time < times - 1 ? lot.chance.between(6, 11) : 0);
  }
  return at;
}

const isAskedLast = (point: ControlPoint) =>
  point.takenAs === 'value' || (point.takenAs === 'attestation' && !recordsMoment(point) && !asksForHumidity(point));

/** The moment of the answer that counts. */
function answerForLabel(lot: LotBeingMade, point: ControlPoint, begin: Date): Date {
  const wrongLabel = lot.plan.mishap === 'label not right';
  const at = minutesAfter(begin, wrongLabel ? 31 : 0);
  if (wrongLabel) {
    lot.read(point, begin, { answer: false, seen: 'Says Beef and barley stew: the roll on the labeller is that of the stew.' });
    settle(lot, minutesAfter(begin, 9), rollOfTheStew);
  }
  lot.read(point, at, { answer: true, seen: seenOn(lot) });
  return at;
}

/** How humidity was kept, when roasting ends. */
export function answerForHumidity(lot: LotBeingMade, at: Date, day: DayOfALot): void {
  const seen = lot.chance.oneOf([
    'Dampers shut, drip pan full; times off the oven card.',
    'Dampers shut, door not opened in between. Oven card.',
    'Dampers shut. Window wet all the time.',
  ]);
  const humidity = humidityOf(lot, day);
  for (const point of lot.controlPoints.filter(asksForHumidity)) lot.read(point, at, { answer: true, seen, humidity });
}

const seenOn = ({ chance }: LotBeingMade): string =>
  chance.oneOf([
    'First label beside the formula, line by line. Kept it.',
    'Read against the formula; allergens, weight and use-by right.',
    `Roll ${chance.between(31, 58)}. First and last label of the run kept.`,
    'Ingredients in order, number and use-by right.',
  ]);

/** The oven is shut some minutes after the pieces go in, for longer than half of the cook; as its own curve says. */
function humidityOf(lot: LotBeingMade, { intoHeat, cook }: DayOfALot): HumidityKept {
  const minutes = cook.at(-1)?.[0] ?? 0;
  const intoOven = lot.after(intoHeat);
  return {
    how: 'sealed oven',
    intoOven: intoOven.toISOString(),
    from: minutesAfter(intoOven, lot.chance.between(8, 22)).toISOString(),
    minutes: Math.ceil(minutes / 2) + lot.chance.between(14, 45),
  };
}

const coldEnough = ({ chance }: LotBeingMade): Value => ({ value: chance.between(35.1, 38.3, 0.1), unit: '°F' });

/** The cold store where the lot waits, read again. */
export function coldStorage(lot: LotBeingMade, at: Date): void {
  const point = lot.controlPoints.find(({ name }) => name === 'Cold storage');
  if (point) lot.read(point, at, coldEnough(lot), { instrument: 'probe' });
}

/** By the names of the shop's instruments; what a laboratory says has none. */
const instrumentFor: Partial<Record<Value['unit'], string>> = { '°F': 'probe', aw: 'waterActivity' };
