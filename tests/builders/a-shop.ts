import type { EstablishmentFields, Role } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { RecordOnce } from '../../apps/api/src/ledger/record-once';
import { foundEstablishment } from '../../apps/api/src/shop/found-establishment';
import { hashPassword } from '../../apps/api/src/shop/password-hash';
import { aDevice, type Device, type Door } from '../support/device';
import type { TestApp } from '../support/start-app';

export type Worker = Device & { personId: string; name: string; userName: string };
export type Shop = { establishmentId: string; owner: Worker; hire(...roles: Role[]): Promise<Worker> };

export const password = 'quite long enough';

export const anEstablishment = (fields: Partial<EstablishmentFields> = {}): EstablishmentFields => ({
  name: 'Wrenfold Smokehouse',
  number: 'Est. 00512-W',
  address: '4 Quarry Row, Wrenfold',
  timeZone: 'America/Chicago',
  units: 'US',
  paper: 'Letter',
  lotCodePattern: '{YY}{DDD}-{n}',
  jurisdiction: 'US, inspected establishment',
  ...fields,
});

export const anOwner = (fields: { userName?: string } = {}) => ({
  personId: v7(),
  name: 'Odile Farrow',
  userName: 'odile',
  password,
  ...fields,
});

/** The shop of a first run, with its owner signed in. */
export async function aShop({ app }: { app: Door }, fields: Partial<EstablishmentFields> = {}): Promise<Shop> {
  const establishmentId = v7();
  const owner = anOwner();
  const device = aDevice(app);
  await done(device.put(`/establishments/${establishmentId}`, { owner, establishment: anEstablishment(fields) }));
  return shopOf(app, establishmentId, { ...device, ...owner });
}

/** A second establishment in the same database, for what must never cross over. */
export async function anotherShop({ app }: TestApp): Promise<Shop> {
  const establishmentId = v7();
  const owner = { ...anOwner({ userName: `other-${establishmentId.slice(-8)}` }), name: 'Tamsin Reed' };
  const passwordHash = await hashPassword(password);
  const details = anEstablishment({ name: 'Lower Wrenfold Kitchen' });
  const by = { personId: owner.personId, establishmentId, station: '' };
  await app.get(RecordOnce, { strict: false }).run(by, { id: establishmentId, kind: 'establishment', request: {} }, async (tx, at) => {
    await foundEstablishment(tx, { establishmentId, demonstration: true, details, owner: { ...owner, passwordHash } }, at);
    return {};
  });
  return shopOf(app, establishmentId, { ...(await signedIn(app, owner.userName)), ...owner });
}

function shopOf(app: Door, establishmentId: string, owner: Worker): Shop {
  const hire = async (...roles: Role[]): Promise<Worker> => {
    const personId = v7();
    const person = { name: `The ${roles.join(' and ')}`, userName: `${roles[0]}-${personId.slice(-8)}` };
    await done(owner.put(`/people/${personId}`, { ...person, password, roles }));
    return { ...(await signedIn(app, person.userName)), ...person, personId };
  };
  return { establishmentId, owner, hire };
}

async function signedIn(app: Door, userName: string): Promise<Device> {
  const device = aDevice(app);
  await done(device.post('/session', { userName, password }));
  return device;
}

/** The body of a reply that has to be a success. */
export async function done<Body = Record<string, never>>(reply: ReturnType<Device['get']>): Promise<Body> {
  const { status, body } = await reply;
  if (status !== 200) throw new Error(`Answered ${status}: ${JSON.stringify(body)}`);
  return body as Body;
}
