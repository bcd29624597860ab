import { signIn, type ReplyOf } from '@larderbook/contracts';
import type { BrowserContext } from '@playwright/test';
import { done, password } from '../builders/a-shop';
import { ask } from './ask';
import { aDevice } from './device';
import type { Larderbook } from './larderbook';

export type SignsIn = { userName: string; password?: string };
export type State = Exclude<Parameters<BrowserContext['setStorageState']>[0], string>;

/** Where the pages keep who is signed in: see apps/web/src/api/session.ts. */
const place = 'larderbook.signed-in';

/** What a device holds once a person has signed in on it. The page that asks for it has tests of its own. */
export async function handsOf({ address }: Larderbook, who: SignsIn): Promise<State> {
  const device = aDevice(address);
  const known = await done<ReplyOf<typeof signIn>>(ask(device, signIn, { password, ...who }));
  const [name = '', value = ''] = device.cookie().split('=', 2);
  const { hostname: domain } = new URL(address);
  return {
    cookies: [{ name, value, domain, path: '/', expires: -1, httpOnly: true, secure: false, sameSite: 'Lax' }],
    origins: [{ origin: address, localStorage: [{ name: place, value: JSON.stringify(known) }] }],
  };
}
