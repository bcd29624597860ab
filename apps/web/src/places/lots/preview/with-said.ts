import type { Clarification, ControlPointOnLot } from '@larderbook/contracts';

export const withSaid = (point: ControlPointOnLot, readingIds: readonly string[], said: Clarification): ControlPointOnLot => ({
  ...point,
  readings: point.readings.map((reading) =>
    readingIds.includes(reading.readingId) ? { ...reading, clarifications: [...(reading.clarifications ?? []), said] } : reading,
  ),
});
