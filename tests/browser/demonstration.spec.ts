import {
  criticalLimit,
  listDeviations,
  listLots,
  listReceipts,
  showLot,
  type InputOf,
  type Lot,
  type ReplyOf,
  type RouteShape,
} from '@larderbook/contracts';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';
import type { Demonstration } from '../support/in-a-browser-demonstration';
import { expect, test } from '../support/in-pseudo';

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

/** Read once for all of these tests: none of them adds to it. */
let lots: Lot[];
test.beforeAll(async ({ demonstration }) => {
  lots = await lotsOf(demonstration);
});

const judgedIn = (lots: readonly Lot[]) => lots.flatMap(({ controlPoints }) => controlPoints.flatMap(({ judged }) => judged));

test('the demonstration has a finished lot that met a limit of each kind, and one that dries', () => {
  const met = judgedIn(lots.filter(({ standing }) => standing === 'shipped')).filter(({ verdict }) => verdict.kind === 'met');
  expect([...new Set(met.map(({ limit }) => limit.kind))].sort()).toEqual(kinds.toSorted());

  const lost = judgedIn(lots).filter(({ verdict }) => verdict.finding === 'not-judged-so');
  expect(lost).toEqual([]);

  const drying = lots.filter(({ controlPoints }) =>
    controlPoints.some(({ stands, judged }) => stands === 'running' && judged.some(({ limit }) => limit.kind === 'weightLoss')),
  );
  expect(drying).toMatchObject([{ standing: 'in-work', openDeviations: 0 }]);
});

test('it shows a decision in two parts, a delivery put right, a late entry and a reading that was not of the core', async ({
  demonstration,
  page,
  signedIn,
}) => {
  const { device } = demonstration;

  const { deviations } = await done<ReplyOf<typeof listDeviations>>(ask(device, listDeviations, { open: 'all' }));
  const split = deviations.filter(({ closing, dispositions }) => closing && dispositions.length > 1);
  expect(split.map(({ dispositions }) => dispositions.map(({ decision }) => decision))).toContainEqual(['condemn', 'release']);
  const condemned = deviations.flatMap(({ dispositions }) => dispositions).filter(({ decision }) => decision === 'condemn');
  expect(condemned.filter(({ destruction }) => !destruction)).toEqual([]);
  const said = deviations.flatMap(({ actions }) =>
    actions.flatMap(({ action }) => Object.values(action).filter((each) => each !== action.form)),
  );
  expect(new Set(said).size).toBe(said.length);

  const { receipts } = await done<ReplyOf<typeof listReceipts>>(ask(device, listReceipts, { left: 'any' }));
  const corrected = receipts.filter(({ corrections }) => corrections.length > 0);
  expect(corrected).toMatchObject([{ corrections: [{ voided: false, changes: [{}] }] }]);

  const readings = lots.flatMap(({ controlPoints }) => controlPoints.flatMap((point) => point.readings));
  const late = readings.filter(({ flags }) => flags.includes('recorded-late'));
  expect(late.length).toBeGreaterThan(1);
  for (const { made } of late) expect(minutesBetween(made.at, made.recordedAt)).toBeGreaterThanOrEqual(60);
  expect(readings.filter(({ clarifications }) => clarifications?.some(({ word }) => word === 'not of the core'))).toHaveLength(1);

  await signedIn(demonstration.owner);
  await page.goto(`/receiving/${corrected[0]?.receiptId}`);
  await expect(page.getByText(/Two figures the wrong way round/)).toBeVisible();
  await page.goto(`/deviations/${split.find(({ controlPoint }) => controlPoint?.name === 'Chilling')?.deviationId}`);
  await expect(page.getByText(/The two thickest pieces/).first()).toBeVisible();
  await expect(page.getByText(/predicted growth of C. perfringens 0.4 log/).first()).toBeVisible();
});

const minutesBetween = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 60_000;

test('water activity is measured in as many sausages as the plan asks', () => {
  const measured = lots
    .filter(({ standing }) => standing === 'shipped')
    .flatMap(({ controlPoints }) => controlPoints.filter(({ controlPoint: { name } }) => name === 'Water activity'));
  expect(measured.map(({ controlPoint: { frequency }, readings }) => [frequency, readings.length])).toEqual([[{ timesInALot: 3 }, 3]]);
});

test('its numbers differ from day to day', () => {
  const curves = lots.flatMap(({ controlPoints }) =>
    controlPoints
      .filter(({ readings }) => readings.length > 3)
      .map(({ readings }) => readings.map(({ entered }) => ('value' in entered ? entered.value : '')).join(' ')),
  );
  expect(new Set(curves).size).toBe(curves.length);
  const lost = lots.flatMap(({ removals }) => removals.filter(({ kind }) => kind.startsWith('loss')).map(({ weight }) => weight.value));
  expect(lost.length).toBeGreaterThan(20);
  expect(new Set(lost).size).toBeGreaterThan(lost.length / 2);
  expect(lots.filter(({ startedAt, standing }) => standing === 'shipped' && new Date(startedAt).getDay() === 0)).toEqual([]);
});
