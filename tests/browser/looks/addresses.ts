import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as contract from '@larderbook/contracts';
import type { InputOf, ReplyOf, RouteShape } from '@larderbook/contracts';
import { projectRoot } from '../../../apps/api/src/project-root';
import { done } from '../../builders/a-shop';
import { ask } from '../../support/ask';
import type { Demonstration } from '../../support/in-a-browser-demonstration';

const table = readFileSync(join(projectRoot, 'apps/web/src/app/routes.tsx'), 'utf8');
const addressesIn = (pattern: RegExp) => [...table.matchAll(pattern)].map(([, address = '']) => address);

/** Every route of the web, as its own table has them. */
export const routes = addressesIn(/^ {2}place\(\s*'([^']+)'/gm);
if (routes.length !== addressesIn(/^ {2}place\(/gm).length)
  throw new Error('A route of the web is written so that its address is not found.');

/** What the names in a route may stand for in the demonstration: one address for each state worth looking at. */
export type Ids = Record<string, string[]>;

/** Of two names that belong together each address is known as a whole: a control point is one of its own lot's plan. */
const explanations = '/lots/$lotId/explanations/$controlPointId';

/** The routes with names filled in; a route of which a name has no id yet is left as it is, and found missing. */
export function addressesOf(route: string, ids: Ids): string[] {
  const known = ids[route];
  if (known) return known;
  const name = /\$(\w+)/.exec(route);
  if (!name) return [route];
  return (ids[name[1] ?? ''] ?? []).flatMap((id) => addressesOf(route.replace(name[0], id), ids));
}

export async function idsIn({ device }: Demonstration): Promise<Ids> {
  const tell = <R extends RouteShape>(route: R, input: InputOf<R>) => done<ReplyOf<R>>(ask(device, route, input));
  const { lots } = await tell(contract.listLots, { standing: 'all' });
  const { products } = await tell(contract.listProducts, {});
  const { receipts } = await tell(contract.listReceipts, { left: 'any' });
  const { deviations } = await tell(contract.listDeviations, { open: 'all' });
  const [first] = products;
  if (!first) throw new Error('The demonstration has no product');
  const product = await tell(contract.showProduct, { productId: first.productId });
  const planId = product.plans.find(({ inForce }) => inForce)?.planId ?? '';
  const { content } = await tell(contract.showPlan, { planId });
  const lotIn = (wanted: string) => lots.find(({ standing }) => standing === wanted)?.lotId ?? '';
  const explained = await Promise.all(
    ['in-work', 'on-hold'].map(lotIn).map(async (lotId) => explainedOf(await tell(contract.showLot, { lotId }))),
  );
  return {
    [explanations]: explained.flat(),
    '/trace/supplier-lot': [`/trace/supplier-lot?lot=${encodeURIComponent(receipts.at(-1)?.supplierLot ?? '')}`, '/trace/supplier-lot'],
    lotId: ['in-work', 'on-hold', 'to-review', 'shipped'].map(lotIn),
    productId: [first.productId],
    planId: [planId],
    stepId: content.steps.slice(0, 1).map(({ stepId }) => stepId),
    controlPointId: content.controlPoints
      .filter(({ takenAs }, i, all) => all.findIndex((other) => other.takenAs === takenAs) === i)
      .map(({ controlPointId }) => controlPointId),
    receiptId: receipts.slice(0, 1).map(({ receiptId }) => receiptId),
    deviationId: [true, false].flatMap((open) => deviations.find((each) => each.open === open)?.deviationId ?? []),
    nodeId: [lotIn('shipped'), receipts.at(-1)?.receiptId ?? ''],
    calculator: [
      'cure-for-meat',
      'curve-against-limit',
      'thermometer-in-boiling-water',
      'batch-by-percent',
      'nitrite-from-natural-source',
      'humidity-while-cooking',
      'binders-in-product',
    ],
  };
}

/** The explanation of one control point for each way in which one stands on a lot. */
function explainedOf({ lotId, controlPoints }: contract.Lot): string[] {
  const first = controlPoints.filter(
    ({ stands, controlPoint: { takenAs } }, i, all) =>
      all.findIndex((other) => other.stands === stands && other.controlPoint.takenAs === takenAs) === i,
  );
  return first.map(({ controlPoint: { controlPointId } }) =>
    explanations.replace('$lotId', lotId).replace('$controlPointId', controlPointId),
  );
}
