import type { SignedIn } from '@larderbook/contracts';
import { QueryClient } from '@tanstack/react-query';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { enter, session } from '../api/session';
import { persist } from './kept-answers';

const aPerson = (name: string): SignedIn => ({
  ...{ personId: name, name, userName: name, roles: ['operator'], establishmentId: 'Wrenfold', demonstration: false },
  establishment: {
    ...{ name: 'Wrenfold Smokehouse', number: 'Est. 00512-W', address: '4 Quarry Row', timeZone: 'America/Chicago', units: 'US' },
    ...{ paper: 'Letter', lotCodePattern: '{YY}{DDD}-{n}', jurisdiction: 'US, inspected establishment' },
  },
});
const [ann, bo] = [aPerson('Ann'), aPerson('Bo')];

let device: Map<string, string>;
let kept: string[];
beforeEach(() => {
  [device, kept] = [new Map([['larderbook.language', 'en']]), []];
  vi.stubGlobal('localStorage', {
    getItem: (place: string) => device.get(place) ?? null,
    setItem: (place: string, said: string) => device.set(place, said),
    removeItem: (place: string) => device.delete(place),
  });
  const put = async (_address: string, answers: Response) => void kept.push(((await answers.json()) as { personId: string }).personId);
  vi.stubGlobal('caches', { open: async () => ({ put }), delete: async () => true });
});
afterEach(() => void vi.unstubAllGlobals());

/** A tab in which Ann has looked at something, before Bo signs in in another one. */
async function aTabOfAnns() {
  const tab = new QueryClient();
  enter(tab, ann);
  tab.setQueryData(['/lots'], { lots: ['what Ann saw'] });
  await persist(tab);
  enter(new QueryClient(), bo);
  return tab;
}

test('what one person saw is not kept as what another saw, who signed in in another tab', async () => {
  const tab = await aTabOfAnns();
  await persist(tab);
  expect(kept).toEqual(['Ann']);
});

test('once the tab knows of the other person, nothing is left of what the first one saw', async () => {
  const tab = await aTabOfAnns();
  vi.stubGlobal('fetch', async () => new Response(JSON.stringify(bo), { headers: { 'content-type': 'application/json' } }));
  expect(await tab.fetchQuery({ ...session, staleTime: 0 })).toMatchObject({ name: 'Bo' });
  expect(tab.getQueryData(['/lots'])).toBeUndefined();
  await persist(tab);
  expect(kept).toEqual(['Ann', 'Bo']);
});
