import type { ControlPointOnLot } from '@larderbook/contracts';

/** The probe not read for the longest time; the reading of `justRead` may not be on the sheet yet. */
export function nextProbe({ controlPoint: { probes }, readings }: ControlPointOnLot, justRead?: string): string {
  const lastRead = (probe: string) =>
    Math.max(
      probe === justRead ? Infinity : -Infinity,
      ...readings.filter((reading) => reading.probe === probe).map(({ made }) => Date.parse(made.at)),
    );
  return [...probes].sort((a, b) => lastRead(a) - lastRead(b))[0] ?? '';
}
