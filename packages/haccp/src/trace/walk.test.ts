import fc from 'fast-check';
import { expect, test } from 'vitest';
import { walk, type Link } from './walk';

const link = (from: string, to: string) => ({ from, to, grams: '1000' });
const shop = [
  link('beef', 'sausage'),
  link('pork', 'sausage'),
  link('pork', 'ham'),
  link('sausage', 'packs of sausage'),
  link('ham', 'packs of ham'),
  link('sausage', 'rework'),
  link('rework', 'next sausage'),
  link('next sausage', 'packs of next sausage'),
  link('packs of sausage', 'inn'),
  link('packs of sausage', 'market'),
];

test('forward from a supplier lot: everything it went into, rework and customers included', () => {
  expect(walk(shop, ['beef'], 'forward').nodes).toEqual([
    'beef',
    'sausage',
    'packs of sausage',
    'rework',
    'inn',
    'market',
    'next sausage',
    'packs of next sausage',
  ]);
});

test('backward from a package: every supplier lot that may be in it', () => {
  const { nodes, links } = walk(shop, ['packs of next sausage'], 'backward');
  expect(nodes).toEqual(['packs of next sausage', 'next sausage', 'rework', 'sausage', 'beef', 'pork']);
  expect(links).toHaveLength(5);
});

test('what is not linked is not in the trace', () => {
  expect(walk(shop, ['beef'], 'forward').nodes).not.toContain('ham');
  expect(walk(shop, ['unknown'], 'forward')).toEqual({ nodes: ['unknown'], links: [] });
});

test('rework that comes back into its own lot does not run in circles', () => {
  const circle = [link('a', 'b'), link('b', 'a')];
  expect(walk(circle, ['a'], 'forward')).toEqual({ nodes: ['a', 'b'], links: circle });
});

test('b is in the forward trace of a exactly when a is in the backward trace of b', () => {
  const node = fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f');
  fc.assert(
    fc.property(fc.array(fc.record<Link>({ from: node, to: node }), { maxLength: 12 }), node, node, (links, a, b) => {
      expect(walk(links, [a], 'forward').nodes.includes(b)).toBe(walk(links, [b], 'backward').nodes.includes(a));
    }),
  );
});
