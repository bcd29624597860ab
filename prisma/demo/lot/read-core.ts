import * as contract from '@larderbook/contracts';
import { isOfKind } from '@larderbook/haccp';
import type { ControlPoint } from '@larderbook/contracts';
import { inSteps } from '../chance';
import type { Curve } from '../curves';
import { onDuty } from '../shop';
import { instantOf, minutesAfter, newId } from '../story';
import type { LotBeingMade } from './lot-being-made';

/** Reads the core through a cook or a chill, at every control point given; the moment after the last reading. */
export function readCore(lot: LotBeingMade, points: ControlPoint[], begin: Date, curve: Curve, ended = true): Date {
  const end = minutesAfter(begin, (curve.at(-1)?.[0] ?? 0) + 1);
  /** The tablet was flat: the last two readings were kept on the card of the trolley and entered together. */
  const late = lot.plan.mishap === 'entered late' && points.some(isChill) ? 64 : 0;
  for (const point of points) {
    readAround(lot, point, minutesAfter(begin, 2));
    for (const [index, [minute, fahrenheit]] of curve.entries()) {
      const taken = minutesAfter(begin, minute);
      const onCard = late > 0 && index >= curve.length - 2;
      const entered = onCard ? minutesAfter(end, late + index - curve.length) : taken;
      readOnce(lot, point, { taken, entered, fahrenheit, index });
    }
    if (ended) lot.endStage(point, minutesAfter(end, late), end);
  }
  return minutesAfter(end, late);
}

export const isChill = (point: ControlPoint) => point.limits.some(({ limit }) => isOfKind(limit, 'cooling'));
const degrees = (fahrenheit: number) => ({ value: inSteps(fahrenheit, 0.1), unit: '°F' as const });

type Read = { taken: Date; entered: Date; fahrenheit: number; index: number };

function readOnce(lot: LotBeingMade, point: ControlPoint, { taken, entered, fahrenheit, index }: Read): void {
  const mistyped = lot.plan.mishap === 'corrected reading' && !isChill(point) && index === 3;
  const slippedOut = lot.plan.mishap === 'probe slipped out' && isChill(point) && index === 3;
  const readingId = newId(entered);
  const by = { probe: point.probes[0], instrument: 'probe', taken };
  if (slippedOut) outOfTheCore(lot, point, minutesAfter(taken, -3));
  lot.read(point, entered, degrees(mistyped ? wrongWayRound(fahrenheit) : fahrenheit), {
    ...by,
    readingId,
    ...(mistyped && { sure: true }),
  });
  if (mistyped) correct(lot, point, { at: taken, readingId, fahrenheit });
}

/** The air of a chiller is read once, as the door is shut. */
function readAround(lot: LotBeingMade, point: ControlPoint, at: Date): void {
  if (!point.surroundings?.setPoint) return;
  lot.read(point, at, degrees(lot.chance.between(32.6, 34.1, 0.1)), { probe: point.surroundings.name, instrument: 'probe' });
}

/** 86.3 for 68.3. */
const wrongWayRound = (fahrenheit: number): number => {
  const [tens, ones] = [Math.floor(fahrenheit / 10) % 10, Math.floor(fahrenheit) % 10];
  return fahrenheit + 9 * (ones - tens);
};

type Slip = { at: Date; readingId: string; fahrenheit: number };

function correct(lot: LotBeingMade, point: ControlPoint, { at, readingId, fahrenheit }: Slip): void {
  const { lotId, world } = lot;
  const noticed = minutesAfter(at, 2);
  lot.tell(noticed, contract.recordReading, { taken: at }).with((takenAt) => ({
    readingId: newId(noticed),
    lotId,
    controlPointId: point.controlPointId,
    entered: degrees(fahrenheit),
    sure: true,
    probe: point.probes[0],
    instrumentId: world.instruments.probe,
    takenAt,
    amends: readingId,
    reason: 'Two digits typed the wrong way round. The display still showed the value.',
  }));
}

/** The thermometer shows the air; it is pushed back in, and a person says what that reading was. */
function outOfTheCore(lot: LotBeingMade, point: ControlPoint, at: Date): void {
  const readingId = newId(at);
  lot.read(point, at, degrees(38.4), { probe: point.probes[0], instrument: 'probe', readingId, sure: true });
  const said = minutesAfter(at, 2);
  lot.story.tell(said, onDuty(said), contract.clarifyReadings).with(() => ({
    clarificationId: newId(said),
    lotId: lot.lotId,
    controlPointId: point.controlPointId,
    readingIds: [readingId],
    word: 'not of the core',
    reason: 'Probe had slipped out of the link and hung in the air. Pushed back in and read again.',
    takenAt: instantOf(said),
  }));
}
