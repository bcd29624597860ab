import type { ControlPointOnLot } from '@larderbook/contracts';

/** The probe whose turn it is: the one not read for the longest time. */
export function nextProbe({ controlPoint: { probes }, readings }: ControlPointOnLot): string {
  const lastRead = (probe: string) =>
    Math.max(
      -Infinity,
      ...readings.filter((reading) => reading.probe === probe).map(({ made }) => Date.parse(made.at)),
    );
  return [...probes].sort((a, b) => lastRead(a) - lastRead(b))[0] ?? '';
}
