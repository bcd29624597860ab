import * as contract from '@larderbook/contracts';
import { operator } from './shop';
import { minutesAfter, newId, type Story } from './story';
import type { World } from './world';

/** Once a week: the probe in ice water, a test weight on the scale. */
export function checkInstruments(story: Story, world: World, at: Date): void {
  const after = minutesAfter(at, 4);
  story.tell(at, operator, contract.recordCalibration).with((takenAt) => ({
    calibrationId: newId(at), instrumentId: world.instruments.probe ?? '', method: 'ice point', expected: 32, observed: 32.2, action: '', takenAt,
  }));
  story.tell(after, operator, contract.recordCalibration).with((takenAt) => ({
    calibrationId: newId(after), instrumentId: world.instruments.scale ?? '', method: 'test weight', expected: 200, observed: 200.1, action: '', takenAt,
  }));
}
