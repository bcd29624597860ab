import type { InputOf, recordReading } from '@larderbook/contracts';
import { v7 } from 'uuid';
import type { SausageKitchen } from './a-sausage-kitchen';

export type ReadingInput = InputOf<typeof recordReading>;

/** A reading of the cold room, 38 °F and within its limit unless the test says otherwise. */
export const aColdRoomReading = ({ points, now }: SausageKitchen, lotId: string, fields: Partial<ReadingInput>): ReadingInput => ({
  readingId: v7(),
  lotId,
  controlPointId: points.coldRoom,
  entered: { value: 38, unit: '°F' },
  takenAt: now(),
  ...fields,
});
