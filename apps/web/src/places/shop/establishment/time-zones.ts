import type { EstablishmentFields } from '@larderbook/contracts';

type Habits = Pick<EstablishmentFields, 'units' | 'paper'>;

export const deviceZone = (): string => new Intl.DateTimeFormat().resolvedOptions().timeZone;

/** The given zone comes first, so that it can always be chosen. */
export function zoneChoices(given: string): { value: string; name: string }[] {
  const zones = new Set([given, ...Intl.supportedValuesOf('timeZone'), 'UTC']);
  return [...zones].map((zone) => ({ value: zone, name: zone.replaceAll('_', ' ').replaceAll('/', ' / ') }));
}

/** A first guess by the device's language ("en-US"), to be looked at. */
export function usualHabits(language: string): Habits {
  const region = /-([A-Z]{2})\b/.exec(language)?.[1] ?? 'US';
  const onLetter = ['US', 'CA', 'MX', 'PH', 'CL', 'CO']; // common practice, no source
  return { units: region === 'US' ? 'US' : 'metric', paper: onLetter.includes(region) ? 'Letter' : 'A4' };
}
