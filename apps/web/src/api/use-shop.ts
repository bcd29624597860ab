import type { EstablishmentFields, Role } from '@larderbook/contracts';
import type { TemperatureUnit } from '@larderbook/haccp';
import { useSession } from './session';

export type Shop = {
  zone: string;
  units: EstablishmentFields['units'];
  degrees: TemperatureUnit;
  roles: Role[];
  isOwner: boolean;
  /** Everybody but an inspector writes in the book. */
  mayRecord: boolean;
};

/** The habits of the shop that is open on this device, and what the person may do in it. */
export function useShop(): Shop {
  const who = useSession();
  const units = who?.establishment.units ?? 'US';
  const roles = who?.roles ?? [];
  return {
    zone: who?.establishment.timeZone ?? 'UTC',
    units,
    degrees: units === 'US' ? '°F' : '°C',
    roles,
    isOwner: roles.includes('owner'),
    mayRecord: roles.some((role) => role !== 'inspector'),
  };
}
