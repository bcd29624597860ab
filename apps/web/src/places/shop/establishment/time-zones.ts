import type { EstablishmentFields } from '@larderbook/contracts';

type Habits = Pick<EstablishmentFields, 'units' | 'paper'>;

/** The zone this device is set to. */
export const deviceZone = (): string => new Intl.DateTimeFormat().resolvedOptions().timeZone;

/** Every zone the browser knows, with the one given first of all, so that it can always be chosen. */
export function zoneChoices(given: string): { value: string; name: string }[] {
  const zones = new Set([given, ...Intl.supportedValuesOf('timeZone'), 'UTC']);
  return [...zones].map((zone) => ({ value: zone, name: zone.replaceAll('_', ' ').replaceAll('/', ' / ') }));
}

/** Units and paper that are usual where the device's language is spoken ("en-US"): only a first guess, to be looked at. */
export function usualHabits(language: string): Habits {
  const region = /-([A-Z]{2})\b/.exec(language)?.[1] ?? 'US';
  const onLetter = ['US', 'CA', 'MX', 'PH', 'CL', 'CO']; // common practice, no source
  return { units: region === 'US' ? 'US' : 'metric', paper: onLetter.includes(region) ? 'Letter' : 'A4' };
}
