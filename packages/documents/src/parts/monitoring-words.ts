import type { MonitoringData } from '../entry-data';

export function monitoringInWords({ what, how, howOften, who }: MonitoringData): string {
  return `${what}; ${how}; ${howOften}; by ${who}`;
}
