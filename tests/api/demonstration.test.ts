import { criticalLimit, listLots, openDemonstration, showLot, signIn, type InputOf, type Lot, type ReplyOf, type RouteShape } from '@larderbook/contracts';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';
import { aDevice } from '../support/device';
import { startApp, type TestApp } from '../support/start-app';

/** The kinds as the contract has them: one that is added has to be shown. */
const kinds = criticalLimit.def.left.options.map(({ shape }) => shape.kind.value);

let app: TestApp;
let lots: Lot[];

beforeAll(async () => {
  app = await startApp(new Date());
  lots = await lotsOfDemonstration();
}, 120_000);
afterAll(() => app.close());

async function lotsOfDemonstration(): Promise<Lot[]> {
  const device = aDevice(app.url, 'office');
  const tell = <R extends RouteShape>(route: R, input: InputOf<R>) => done<ReplyOf<R>>(ask(device, route, input));
  const { signIns } = await tell(openDemonstration, {});
  await tell(signIn, signIns[0] ?? { userName: '', password: '' });
  const found: Lot[] = [];
  let before: string | undefined;
  for (let more = true; more; ) {
    const page = await tell(listLots, { standing: 'all', before });
    for (const { lotId } of page.lots) found.push(await tell(showLot, { lotId }));
    before = page.lots.at(-1)?.startedAt;
    more = page.more;
  }
  return found;
}

const judgedIn = (of: readonly Lot[]) => of.flatMap(({ controlPoints }) => controlPoints.flatMap(({ judged }) => judged));

test.each(kinds)('a finished lot has met a limit of the kind %s', (kind) => {
  const finished = lots.filter(({ standing }) => standing === 'shipped');
  const met = judgedIn(finished).filter(({ limit, verdict }) => limit.kind === kind && verdict.kind === 'met');
  expect(met).not.toEqual([]);
});

test('no limit is left that cannot be judged from what is recorded', () => {
  const lost = judgedIn(lots).filter(({ verdict }) => verdict.because.startsWith('This limit cannot be judged'));
  expect(lost).toEqual([]);
});

test('one lot is drying, and nothing about it is wrong', () => {
  const drying = lots.filter(({ controlPoints }) =>
    controlPoints.some(({ stands, judged }) => stands === 'running' && judged.some(({ limit }) => limit.kind === 'weightLoss')),
  );
  expect(drying).toMatchObject([{ standing: 'in-work', openDeviations: 0 }]);
});
