import { expect, test } from 'vitest';
import { aTrace } from './drawing/a-trace.test-data';
import { sumUp } from './sum-up';

test('a lot reaches its own packages and those of the lot it was reworked into', () => {
  expect(sumUp(aTrace)).toEqual({ suppliers: 2, deliveries: 2, lots: 2, packed: 25, shipped: 22, customers: 2 });
});

test('a packing reaches no other packages of its lot', () => {
  const packs = aTrace.forward.nodes.filter(({ id }) => id === 'L-1-P1');
  const ofPacking = {
    ...aTrace,
    start: { kind: 'packing' as const, id: 'L-1-P1', code: 'L-1-P1', what: '' },
    backward: {
      nodes: [...aTrace.backward.nodes, ...packs],
      links: [...aTrace.backward.links, { from: 'L-1', to: 'L-1-P1', grams: 10_000, count: 20 }],
    },
    forward: {
      nodes: [...packs, ...aTrace.forward.nodes.filter(({ kind }) => kind === 'customer')],
      links: aTrace.forward.links.filter(({ from }) => from === 'L-1-P1'),
    },
  };
  expect(sumUp(ofPacking)).toMatchObject({ lots: 1, packed: 20, shipped: 17 });
});
