import * as contract from '@larderbook/contracts';
import { Chance } from './chance';
import { onDuty, type instruments } from './shop';
import { minutesAfter, newId, type Story } from './story';
import type { World } from './world';

type Check = {
  instrument: (typeof instruments)[number]['key'];
  method: contract.InputOf<typeof contract.recordCalibration>['method'];
  expected: number;
  /** What it shows is off by at most so much, in steps of its display. */
  off: [least: number, most: number, step: number];
  /** Every so many weeks. */
  every: number;
};

const checks: Check[] = [
  { instrument: 'probe', method: 'ice point', expected: 32, off: [-0.2, 0.4, 0.1], every: 1 },
  { instrument: 'scale', method: 'test weight', expected: 200, off: [-0.1, 0.1, 0.1], every: 1 },
  { instrument: 'floorScale', method: 'test weight', expected: 50, off: [-0.05, 0.05, 0.05], every: 4 },
  { instrument: 'pH', method: 'reference instrument', expected: 7, off: [-0.02, 0.03, 0.01], every: 2 },
  { instrument: 'logger', method: 'reference instrument', expected: 75.2, off: [-0.4, 0.4, 0.1], every: 4 },
  { instrument: 'waterActivity', method: 'reference instrument', expected: 0.753, off: [-0.002, 0.002, 0.001], every: 4 },
];

/** The probe in ice water, test weights on the scales, and what is due in this week besides. */
export function checkInstruments(story: Story, world: World, begin: Date, week = 0): void {
  const chance = new Chance(`checks of week ${week}`);
  let at = begin;
  for (const { instrument, method, expected, off } of checks.filter((check) => week % check.every === 0)) {
    const [moment, instrumentId] = [at, world.instruments[instrument] ?? ''];
    const observed = Number((expected + chance.between(...off)).toFixed(3));
    story.tell(moment, onDuty(moment), contract.recordCalibration).with((takenAt) => ({
      calibrationId: newId(moment),
      instrumentId,
      method,
      expected,
      observed,
      action: '',
      takenAt,
    }));
    at = minutesAfter(at, chance.between(2, 5));
  }
}
