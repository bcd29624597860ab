import * as contract from '@larderbook/contracts';
import { instruments, operator } from './shop';
import { newId, type Story } from './story';
import type { World } from './world';

/** The probe in ice water, once a week. */
export function checkThermometer(story: Story, world: World, at: Date): void {
  const [probe] = instruments;
  story.tell(at, operator, contract.recordCalibration).with((takenAt) => ({
    calibrationId: newId(at), instrumentId: world.instruments[probe.key] ?? '', method: 'ice point', expected: 32, observed: 32.2, action: '', takenAt,
  }));
}
