import * as contract from '@larderbook/contracts';
import { operator, type instruments } from './shop';
import { minutesAfter, newId, type Story } from './story';
import type { World } from './world';

type Check = {
  instrument: (typeof instruments)[number]['key'];
  method: contract.InputOf<typeof contract.recordCalibration>['method'];
  expected: number;
  observed: number;
  /** Every so many weeks. */
  every: number;
};

const checks: Check[] = [
  { instrument: 'probe', method: 'ice point', expected: 32, observed: 32.2, every: 1 },
  { instrument: 'scale', method: 'test weight', expected: 200, observed: 200.1, every: 1 },
  { instrument: 'pH', method: 'reference instrument', expected: 7, observed: 7.02, every: 2 },
  { instrument: 'logger', method: 'reference instrument', expected: 75.2, observed: 75.6, every: 4 },
  { instrument: 'waterActivity', method: 'reference instrument', expected: 0.753, observed: 0.754, every: 4 },
];

/** The probe in ice water, a test weight on the scale, and what is due in this week besides. */
export function checkInstruments(story: Story, world: World, begin: Date, week = 0): void {
  checks
    .filter(({ every }) => week % every === 0)
    .forEach(({ instrument, every: _, ...check }, index) => {
      const at = minutesAfter(begin, 4 * index);
      const instrumentId = world.instruments[instrument] ?? '';
      story.tell(at, operator, contract.recordCalibration).with((takenAt) => ({
        calibrationId: newId(at), instrumentId, ...check, action: '', takenAt,
      }));
    });
}
