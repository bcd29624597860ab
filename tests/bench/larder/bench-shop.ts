import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { furnish } from '../../../prisma/demo/furnish';
import { demoPassword, establishment } from '../../../prisma/demo/shop';
import type { Send } from '../../../prisma/demo/story';
import type { World } from '../../../prisma/demo/world';
import { apiClient, type Transport } from '../../../apps/api/src/demonstration/api-client';
import { RecordOnce } from '../../../apps/api/src/ledger/record-once';
import { foundEstablishment } from '../../../apps/api/src/shop/found-establishment';
import { hashPassword } from '../../../apps/api/src/shop/password-hash';
import { Clock } from '../../../apps/api/src/platform/clock';
import { Database } from '../../../apps/api/src/platform/database';
import type { Larder } from './open-larder';

/** Before anything that is recorded in it. */
const threeDays = 3 * 24 * 60 * 60 * 1000;

/** One furnished establishment, its owner signed in. */
export type BenchShop = {
  establishmentId: string;
  owner: string;
  world: World;
  /** Sends as the owner, now. */
  tell: <R extends contract.RouteShape>(route: R, input: contract.InputOf<R>) => Promise<contract.ReplyOf<R>>;
  cookie: string;
};

/** So many establishments in one database: only the first could be set up from the page. */
export async function openShops({ url, database }: Larder, count: number): Promise<BenchShop[]> {
  const db = new Database({ url: database.apiUrl });
  try {
    const once = new RecordOnce(db, new Clock());
    return await Promise.all(Array.from({ length: count }, (_, index) => openShop(url, once, `owner-${index + 1}`)));
  } finally {
    await db.onModuleDestroy();
  }
}

async function openShop(url: string, once: RecordOnce, owner: string): Promise<BenchShop> {
  const establishmentId = await found(once, owner);
  let cookie = '';
  const send: Send = apiClient(
    overHttp(url, (given) => (cookie = given)),
    (_moment, work) => work(),
    demoPassword,
  );
  const world = await furnish(send, new Date(Date.now() - threeDays), owner);
  const tell: BenchShop['tell'] = (route, input) => send(route, input, owner, new Date());
  await tell(contract.recordCalibration, {
    calibrationId: v7(),
    instrumentId: world.instruments.probe ?? '',
    method: 'ice point',
    expected: 32,
    observed: 32,
    action: '',
    takenAt: new Date().toISOString(),
  });
  return { establishmentId, owner, world, tell, cookie };
}

async function found(once: RecordOnce, userName: string): Promise<string> {
  const [establishmentId, personId] = [v7(), v7()];
  const owner = { personId, name: `The ${userName}`, userName, passwordHash: await hashPassword(demoPassword) };
  const by = { personId, establishmentId, station: '' };
  await once.run(by, { id: establishmentId, kind: 'establishment', request: {} }, async (tx, at) => {
    await foundEstablishment(tx, { establishmentId, demonstration: false, details: establishment, owner }, at);
    return {};
  });
  return establishmentId;
}

/** `keep` is told the session cookie when there is one. */
const overHttp =
  (url: string, keep: (cookie: string) => void): Transport =>
  async (method, path, headers, body) => {
    const reply = await fetch(url + path, { method, headers, body });
    const cookies = reply.headers.getSetCookie();
    if (cookies.length > 0) keep(cookies.map((one) => one.split(';')[0]).join('; '));
    return { status: reply.status, body: await reply.text(), cookies };
  };
