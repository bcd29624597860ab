import * as contract from '@larderbook/contracts';
import type { ControlPoint } from '@larderbook/contracts';
import type { Curve } from '../curves';
import { instantOf, minutesAfter, newId } from '../story';
import { tenths, type LotBeingMade } from './lot-being-made';

/** Reads the core through a cook or a chill, at every control point given; the moment after the last reading. */
export function readCore(lot: LotBeingMade, points: ControlPoint[], begin: Date, curve: Curve, ended = true): Date {
  const end = minutesAfter(begin, (curve.at(-1)?.[0] ?? 0) + 1);
  for (const point of points) {
    readAround(lot, point, minutesAfter(begin, 2));
    for (const [index, [minute, fahrenheit]] of curve.entries()) {
      const at = minutesAfter(begin, minute);
      const slip = lot.plan.mishap === 'corrected reading' && index === 9;
      const readingId = newId(at);
      const entered = degrees(slip ? fahrenheit - 27 : fahrenheit);
      lot.read(point, at, entered, { probe: point.probes[0], instrument: 'probe', readingId });
      if (slip) correct(lot, point, { at, readingId, fahrenheit });
    }
    if (ended) lot.endStage(point, end);
  }
  return end;
}

const degrees = (fahrenheit: number) => ({ value: tenths(fahrenheit), unit: '°F' as const });

/** The air of a chiller is read once, as the door is shut. */
function readAround(lot: LotBeingMade, point: ControlPoint, at: Date): void {
  if (!point.surroundings?.setPoint) return;
  lot.read(point, at, degrees(33.5), { probe: point.surroundings.name, instrument: 'probe' });
}

type Slip = { at: Date; readingId: string; fahrenheit: number };

function correct(lot: LotBeingMade, point: ControlPoint, { at, readingId, fahrenheit }: Slip): void {
  const { lotId, world } = lot;
  const noticed = minutesAfter(at, 2);
  lot.tell(noticed, contract.recordReading).with(() => ({
    readingId: newId(noticed), lotId, controlPointId: point.controlPointId, entered: degrees(fahrenheit),
    probe: point.probes[0], instrumentId: world.instruments.probe, takenAt: instantOf(at), amends: readingId,
    reason: 'Two digits typed the wrong way round; the display still showed the value.',
  }));
}
