import type { Trace } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

export type TraceKind = Trace['forward']['nodes'][number]['kind'] | 'supplier';

export type TraceNode = { id: string; kind: TraceKind; title: string; lines: string[]; at: string };
export type TraceLink = Trace['forward']['links'][number];
export type TraceGraph = { startId: string; nodes: TraceNode[]; links: TraceLink[] };

/** Without room for `suppliers` as nodes, each delivery names its supplier. */
export function traceGraph(trace: Trace, say: SayOf<'trace'>, { suppliers }: { suppliers: boolean }): TraceGraph {
  const found = new Map([...trace.backward.nodes, ...trace.forward.nodes].map((node) => [node.id, node]));
  const links = new Map([...trace.backward.links, ...trace.forward.links].map((link) => [`${link.from} ${link.to}`, link]));
  const deliveries = deliveriesOf(trace);
  const nodes = [...found.values()].map((node) => ({
    id: node.id,
    kind: node.kind,
    title: node.code,
    lines: linesOf(node, suppliers, say),
    at: node.at,
  }));
  const receipts = nodes.filter(({ kind }) => kind === 'receipt');
  return {
    startId: trace.start.id,
    nodes: [...(suppliers ? supplierNodes(trace) : []), ...nodes],
    links: [...(suppliers ? supplierLinks(receipts, deliveries) : []), ...links.values()],
  };
}

type Delivery = { supplierId: string; grams: number };

/** Keyed by the code of the delivery. */
function deliveriesOf({ suppliers }: Trace): Map<string, Delivery> {
  return new Map(
    suppliers.flatMap(({ receipts }, i) => receipts.map(({ code, grams }) => [code, { supplierId: supplierId(i), grams }] as const)),
  );
}

const supplierId = (i: number): string => `supplier ${i}`;

function supplierNodes({ suppliers }: Trace): TraceNode[] {
  return suppliers.map(({ name, establishmentNumber, receipts }, i) => ({
    id: supplierId(i),
    kind: 'supplier',
    title: name,
    lines: establishmentNumber ? [establishmentNumber] : [],
    at: receipts[0]?.receivedAt ?? '',
  }));
}

function supplierLinks(receipts: TraceNode[], deliveries: ReadonlyMap<string, Delivery>): TraceLink[] {
  return receipts.flatMap(({ id, title }) => {
    const delivery = deliveries.get(title);
    return delivery ? [{ from: delivery.supplierId, to: id, grams: delivery.grams }] : [];
  });
}

type Node = Trace['forward']['nodes'][number];

function linesOf({ kind, what, supplier = '', supplierLot = '' }: Node, suppliers: boolean, say: SayOf<'trace'>): string[] {
  if (kind === 'receipt') return [what, say('lot-number', { lot: supplierLot }), ...(suppliers ? [] : [supplier])];
  return what && kind !== 'packing' ? [what] : []; // the line that leads to packages says how many
}
