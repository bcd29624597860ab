import type { Trace } from '@larderbook/contracts';

/** Packages are counted over all packing runs reached; `shipped` of them have left. */
export type Reach = {
  suppliers: number;
  deliveries: number;
  lots: number;
  packed: number;
  shipped: number;
  customers: number;
};

export function sumUp({ start, backward, forward, suppliers, customers }: Trace): Reach {
  const nodes = new Map([...backward.nodes, ...forward.nodes].map((node) => [node.id, node.kind]));
  const many = (kind: 'receipt' | 'lot') => [...nodes.values()].filter((each) => each === kind).length;
  const intoPackages = start.kind === 'packing' ? backward.links : forward.links;
  const packages = (links: Trace['forward']['links'], kind: 'packing' | 'customer') =>
    links.filter(({ to }) => nodes.get(to) === kind).reduce((sum, { count = 0 }) => sum + count, 0);
  return {
    suppliers: suppliers.length,
    deliveries: many('receipt'),
    lots: many('lot'),
    packed: packages(intoPackages, 'packing'),
    shipped: packages(forward.links, 'customer'),
    customers: customers.length,
  };
}
