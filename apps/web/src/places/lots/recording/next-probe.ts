import type { ControlPointOnLot } from '@larderbook/contracts';

/**
 * The probe whose turn it is: the one not read for the longest time. `justRead` is the one whose reading was saved a
 * moment ago and may not be on the sheet yet.
 */
export function nextProbe({ controlPoint: { probes }, readings }: ControlPointOnLot, justRead?: string): string {
  const lastRead = (probe: string) =>
    Math.max(
      probe === justRead ? Infinity : -Infinity,
      ...readings.filter((reading) => reading.probe === probe).map(({ made }) => Date.parse(made.at)),
    );
  return [...probes].sort((a, b) => lastRead(a) - lastRead(b))[0] ?? '';
}
