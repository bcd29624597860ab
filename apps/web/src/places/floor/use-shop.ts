import type { Role } from '@larderbook/contracts';
import type { TemperatureUnit } from '@larderbook/haccp';
import { useSession } from '../../api/session';
import type { ShownUnits } from './say/say-grams';

export type Shop = { zone: string; units: ShownUnits; degrees: TemperatureUnit; roles: Role[]; mayRecord: boolean };

/** The habits of the shop that is open on this device, and whether the person may write in its book. */
export function useShop(): Shop {
  const who = useSession();
  const units = who?.establishment.units ?? 'US';
  const roles = who?.roles ?? [];
  return {
    zone: who?.establishment.timeZone ?? 'UTC', units, degrees: units === 'US' ? '°F' : '°C', roles,
    mayRecord: roles.some((role) => role !== 'inspector'),
  };
}
