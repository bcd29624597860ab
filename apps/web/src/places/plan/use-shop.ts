import type { MassUnit, TemperatureUnit } from '@larderbook/haccp';
import { useSession } from '../../api/session';

export type Shop = {
  zone: string;
  degrees: TemperatureUnit;
  heavy: MassUnit;
  light: MassUnit;
  isOwner: boolean;
  mayRecord: boolean;
  /** Of the person who is signed in. */
  name: string;
  /** Of the shop itself. */
  establishment: string;
};

/** The shop's units and clock, and what who is signed in may write: plans as the owner, lots unless an inspector. */
export function useShop(): Shop {
  const who = useSession();
  const isMetric = who?.establishment.units === 'metric';
  return {
    zone: who?.establishment.timeZone ?? 'UTC',
    degrees: isMetric ? '°C' : '°F',
    heavy: isMetric ? 'kg' : 'lb',
    light: isMetric ? 'g' : 'oz',
    mayRecord: who?.roles.some((role) => role !== 'inspector') ?? false,
    isOwner: who?.roles.includes('owner') ?? false,
    name: who?.name ?? '',
    establishment: who?.establishment.name ?? '',
  };
}
