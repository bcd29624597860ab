import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { addPerson, setUpShop } from '@larderbook/contracts';
import { isOfKind } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { checkInstruments } from '../../../../prisma/demo/check-instruments';
import { furnish } from '../../../../prisma/demo/furnish';
import { liveALot } from '../../../../prisma/demo/live-a-lot';
import { receive } from '../../../../prisma/demo/receive';
import { demoPassword, establishment, owner, people } from '../../../../prisma/demo/shop';
import { ship } from '../../../../prisma/demo/ship';
import { minutesAfter, Story, type Send } from '../../../../prisma/demo/story';
import type { Clock } from '../platform/clock';
import { apiClient } from './api-client';

const day = 24 * 60;

/** Goes through the HTTP API, as any client would. Returns the files written. */
export async function oneLot(url: string, clock: Clock, folder: string): Promise<string[]> {
  const transport = over(url);
  const send = apiClient(transport, (moment, work) => clock.at(moment, work), demoPassword);
  const now = new Date();
  const start = minutesAfter(now, -day - 700);

  await openShop(send, minutesAfter(start, -day));
  const world = await furnish(send, minutesAfter(start, -day + 60));
  const story = new Story(send);
  checkInstruments(story, world, minutesAfter(start, -90));
  receive(story, world, { item: 'shoulder', pounds: 60, fahrenheit: 36.5 }, minutesAfter(start, -60));
  receive(story, world, { item: 'belly', pounds: 30, fahrenheit: 37.2 }, minutesAfter(start, -55));
  const lot = liveALot(story, world, { daysAgo: 1, product: 'sausage', meat: 44 }, start);
  ship(story, world, lot, ['market', 'inn'], minutesAfter(lot.readyAt, 150));
  await story.run();

  const chill = world.products.sausage.plan.controlPoints.find(({ limits }) => limits.some(({ limit }) => isOfKind(limit, 'cooling')));
  const period = `from=${dayOf(minutesAfter(start, -day))}&to=${dayOf(now)}`;
  return writePapers(transport, folder, {
    'lot-record.pdf': `/api/v1/lots/${lot.lotId}/lot-record.pdf`,
    'monitoring-log.pdf': `/api/v1/monitoring-log.pdf?controlPointId=${chill?.controlPointId}&${period}`,
    'trace.json': `/api/v1/traces/${lot.packingId}`,
    'openapi.json': '/api/openapi.json',
  });
}

const dayOf = (moment: Date) => moment.toISOString().slice(0, 10);

async function openShop(send: Send, at: Date): Promise<void> {
  const [first, ...others] = people;
  if (!first) throw new Error('The shop has no owner');
  const password = demoPassword;
  await send(
    setUpShop,
    { establishmentId: v7(), owner: { personId: v7(), name: first.name, userName: first.userName, password }, establishment },
    owner,
    at,
  );
  for (const { userName, name, roles } of others) await send(addPerson, { personId: v7(), userName, name, roles, password }, owner, at);
}

/** The inspector may read everything. */
async function writePapers(transport: ReturnType<typeof over>, folder: string, papers: Record<string, string>): Promise<string[]> {
  mkdirSync(folder, { recursive: true });
  const body = JSON.stringify({ userName: 'demo-inspector', password: demoPassword });
  const { cookies } = await transport('POST', '/api/v1/session', { 'content-type': 'application/json', 'x-larderbook': '1' }, body);
  const cookie = cookies.map((one) => one.split(';')[0]).join('; ');

  return Promise.all(
    Object.entries(papers).map(async ([name, path]) => {
      const { status, bytes } = await transport('GET', path, { cookie });
      if (status !== 200) throw new Error(`${name} could not be fetched from ${path}: ${status} ${Buffer.from(bytes).toString()}`);
      const file = join(folder, name);
      writeFileSync(file, bytes);
      return file;
    }),
  );
}

const over = (url: string) => async (method: string, path: string, headers: Record<string, string>, body?: string) => {
  const reply = await fetch(url + path, { method, headers, body });
  const bytes = new Uint8Array(await reply.arrayBuffer());
  return { status: reply.status, bytes, body: new TextDecoder().decode(bytes), cookies: reply.headers.getSetCookie() };
};
