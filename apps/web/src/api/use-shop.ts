import type { EstablishmentFields, Role } from '@larderbook/contracts';
import type { MassUnit, TemperatureUnit } from '@larderbook/haccp';
import { useSession } from './session';

export type Shop = {
  zone: string;
  units: EstablishmentFields['units'];
  degrees: TemperatureUnit;
  heavy: MassUnit;
  light: MassUnit;
  roles: Role[];
  isOwner: boolean;
  /** Everybody but an inspector writes in the book. */
  mayRecord: boolean;
  /** Of the person who is signed in. */
  name: string;
  establishment: string;
};

export function useShop(): Shop {
  const who = useSession();
  const units = who?.establishment.units ?? 'US';
  const roles = who?.roles ?? [];
  const isMetric = units === 'metric';
  return {
    zone: who?.establishment.timeZone ?? 'UTC',
    units,
    degrees: isMetric ? '°C' : '°F',
    heavy: isMetric ? 'kg' : 'lb',
    light: isMetric ? 'g' : 'oz',
    roles,
    isOwner: roles.includes('owner'),
    mayRecord: roles.some((role) => role !== 'inspector'),
    name: who?.name ?? '',
    establishment: who?.establishment.name ?? '',
  };
}
