import { criticalLimit, listLots, showLot, type InputOf, type Lot, type ReplyOf, type RouteShape } from '@larderbook/contracts';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';
import { expect, test } from '../support/in-a-browser';
import type { Demonstration } from '../support/in-a-browser-demonstration';

/** The kinds as the contract has them: one that is added has to be shown. */
const kinds = criticalLimit.def.left.options.map(({ shape }) => shape.kind.value);

async function lotsOf({ device }: Demonstration): Promise<Lot[]> {
  const tell = <R extends RouteShape>(route: R, input: InputOf<R>) => done<ReplyOf<R>>(ask(device, route, input));
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

const judgedIn = (lots: readonly Lot[]) =>
  lots.flatMap(({ controlPoints }) => controlPoints.flatMap(({ judged }) => judged));

test('the demonstration has a finished lot that met a limit of each kind, and one that dries', async ({ demonstration }) => {
  test.setTimeout(120_000);
  const lots = await lotsOf(demonstration);
  const met = judgedIn(lots.filter(({ standing }) => standing === 'shipped')).filter(({ verdict }) => verdict.kind === 'met');
  expect([...new Set(met.map(({ limit }) => limit.kind))].sort()).toEqual(kinds.toSorted());

  const lost = judgedIn(lots).filter(({ verdict }) => verdict.because.startsWith('This limit cannot be judged'));
  expect(lost).toEqual([]);

  const drying = lots.filter(({ controlPoints }) =>
    controlPoints.some(
      ({ stands, judged }) => stands === 'running' && judged.some(({ limit }) => limit.kind === 'weightLoss'),
    ),
  );
  expect(drying).toMatchObject([{ standing: 'in-work', openDeviations: 0 }]);
});
