import { Readable } from 'node:stream';
import * as contract from '@larderbook/contracts';
import { requestOf, type RouteShape } from '@larderbook/contracts';
import { inShort } from '../../packages/documents/src/lot-record/at-a-glance';
import { readBack } from '../../packages/documents/src/read-back.test-data';
import { ask } from '../support/ask';
import type { Device } from '../support/device';
import { expect, test } from '../support/in-pseudo';
import { amounts } from './looks/typed-by-people';
import { dataIn, untranslatedIn } from './looks/untranslated';

test.use({ locale: 'es-MX' });

type Paper = { path: string; data: string[] };

/** Of each kind of paper one for each state worth printing, with what people typed of what it is about. */
async function papersOf(device: Device): Promise<Paper[]> {
  const tell = async (route: RouteShape, input: object) => (await ask(device, route, input as never)).body;
  const { lots } = await tell(contract.listLots, { standing: 'all' });
  const { deviations } = await tell(contract.listDeviations, { open: 'all' });
  const { controlPoints } = await tell(contract.listControlPoints, {});
  const { receipts } = await tell(contract.listReceipts, { left: 'any' });
  const people = await tell(contract.listPeople, {});
  const shop = await tell(contract.whoIsSignedIn, {});
  const instruments = await tell(contract.listInstruments, {});
  const { products } = await tell(contract.listProducts, {});
  const shown = { lots: [] as unknown[], plans: [] as unknown[] };
  for (const { lotId } of lots) shown.lots.push(await tell(contract.showLot, { lotId }));
  for (const { productId } of products)
    for (const { planId } of (await tell(contract.showProduct, { productId })).plans)
      shown.plans.push(await tell(contract.showPlan, { planId }));
  const customers = await tell(contract.listCustomers, {});
  const shipments = await tell(contract.listShipments, {});
  const suppliers = await tell(contract.listSuppliers, {});
  const full = [];
  for (const { deviationId } of deviations) full.push(await tell(contract.showDeviation, { deviationId }));
  const statements = (shown.plans as contract.Plan[]).flatMap(({ statement }) => statement ?? []);
  const data = [
    ...statements,
    ...dataIn([
      products,
      lots,
      deviations,
      controlPoints,
      receipts,
      people,
      shop,
      instruments,
      shown,
      customers,
      suppliers,
      shipments,
      full,
    ]),
  ];

  const one = <Of>(all: readonly Of[], by: (each: Of) => unknown) =>
    all.filter((each, i) => all.findIndex((other) => by(other) === by(each)) === i);
  const to = new Date().toISOString().slice(0, 10);
  const from = new Date(Date.now() - 60 * 86_400_000).toISOString().slice(0, 10);
  const at = (route: RouteShape, input: object) => ({ path: requestOf(route, { ...input, language: 'es' } as never).path, data });
  const { supplierLot } = receipts[0];
  return [
    ...one(lots as { lotId: string; standing: string }[], ({ standing }) => standing).map(({ lotId }) =>
      at(contract.printLotRecord, { lotId }),
    ),
    ...one(deviations as { deviationId: string; form: string }[], ({ form }) => form).map(({ deviationId }) =>
      at(contract.printDeviationReport, { deviationId }),
    ),
    ...one(controlPoints as { controlPointId: string; kind: string }[], ({ controlPointId }) => controlPointId)
      .slice(0, 8)
      .map(({ controlPointId }) => at(contract.printMonitoringLog, { controlPointId, from, to })),
    ...(shown.plans as { planId: string }[]).map(({ planId }) => at(contract.printPlan, { planId })),
    at(contract.printSupplierLot, { supplierLot }),
  ];
}

/** As persons sign a line, as statements of theirs are shortened in a table, and as citations are printed. */
const onPaper = (data: readonly string[]): string[] => [
  ...data,
  ...data.filter((text) => /^\p{Lu}\p{L}+(?: \p{Lu}\p{L}+)+$/u.test(text)).map((name) => name.replace(/(\p{Lu})\p{L}+ ?/gu, '$1')),
  ...data.map(inShort),
  'CFR',
];

/** Messages of which the end is missing, but for what people typed in them, which may be shortened. */
function cutIn(text: string, data: readonly string[]): string[] {
  const opened: number[] = [];
  for (const [at, letter] of [...text].entries()) {
    if (letter === '‹') opened.push(at);
    if (letter === '›') opened.pop();
  }
  const shown = opened.map((at) => [...text].slice(at, at + 200).join(''));
  return shown.filter((cut) => {
    const tail = cut.slice(0, cut.indexOf('…')).trim().slice(-12);
    return !data.some((each) => each.includes(tail));
  });
}

test('every paper is printed in it, and no message is cut off', async ({ page, demonstration, signedIn }) => {
  await signedIn(demonstration.owner);
  const papers = await papersOf(demonstration.device);
  expect(new Set(papers.map(({ path }) => path.replace(/[0-9a-f-]{36}/, '').split('?')[0])).size).toBe(5);
  for (const { path, data } of papers) {
    const reply = await page.request.get(`/api/v1${path}`);
    const { pages, title, outline, alternatives } = await readBack(Readable.from([await reply.body()]));
    const text = pages
      .map((each) => each.text)
      .join(' ')
      .replace(/\s+/g, ' ');
    expect.soft(untranslatedIn([text, title, ...outline, ...alternatives], [...onPaper(data), ...amounts]), path).toEqual([]);
    expect.soft(cutIn(text, data), path).toEqual([]);
  }
});
