import type { MassUnit, TemperatureUnit } from '@larderbook/haccp';
import { useSession } from '../../api/session';

export type Shop = { zone: string; degrees: TemperatureUnit; heavy: MassUnit; light: MassUnit; isOwner: boolean; name: string };

/** The units the shop reads, its clock, and whether who is signed in may write products, formulas and plans. */
export function useShop(): Shop {
  const who = useSession();
  const isMetric = who?.establishment.units === 'metric';
  return {
    zone: who?.establishment.timeZone ?? 'UTC',
    degrees: isMetric ? '°C' : '°F',
    heavy: isMetric ? 'kg' : 'lb',
    light: isMetric ? 'g' : 'oz',
    isOwner: who?.roles.includes('owner') ?? false,
    name: who?.name ?? '',
  };
}
