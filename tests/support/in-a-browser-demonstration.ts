import { openDemonstration, signIn, type ReplyOf } from '@larderbook/contracts';
import { done } from '../builders/a-shop';
import { ask } from './ask';
import { aDevice, type Device } from './device';
import type { Larderbook } from './larderbook';

type SignIn = ReplyOf<typeof openDemonstration>['signIns'][number];

/** The demonstration shop in a Larderbook: its people, and a device of its owner to look things up with. */
export type Demonstration = { owner: SignIn; device: Device };

/** Opens the demonstration, as the button on the first page does: new, it lives its two months first. */
export async function furnishDemonstration({ address }: Larderbook): Promise<Demonstration> {
  const device = aDevice(address, 'office');
  const { signIns } = await done<ReplyOf<typeof openDemonstration>>(ask(device, openDemonstration, {}));
  const owner = signIns.find(({ role }) => role === 'owner');
  if (!owner) throw new Error('The demonstration has no owner');
  await done(ask(device, signIn, owner));
  return { owner, device };
}
