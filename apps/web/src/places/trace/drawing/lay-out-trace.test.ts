import { expect, test } from 'vitest';
import { inEnglish } from '../../../ui/in-english.test-data';
import { aTrace } from './a-trace.test-data';
import { columnsOf } from './columns-of';
import { layOutTrace } from './lay-out-trace';
import { traceGraph, type TraceGraph } from './trace-graph';

const say = inEnglish('trace');
const withSuppliers = traceGraph(aTrace, say, { suppliers: true });
const columnsIn = (graph: TraceGraph) => columnsOf(graph).map(({ heading, nodes }) => [heading, ...nodes.map(({ title }) => title)]);

test('from suppliers at the left to customers at the right, a lot to the right of what went into it', () => {
  expect(columnsIn(withSuppliers)).toEqual([
    ['suppliers', 'Holt', 'Spice'],
    ['deliveries', 'R-1', 'R-2'],
    ['lots', 'L-1'],
    ['lots-made-of-them', 'L-2'],
    ['packages', 'L-1-P1', 'L-2-P1'],
    ['customers', 'The Inn', 'Market Hall'],
  ]);
});

test('where there is no room for suppliers each delivery names its own', () => {
  const graph = traceGraph(aTrace, say, { suppliers: false });
  expect(columnsIn(graph)[0]).toEqual(['deliveries', 'R-1', 'R-2']);
  expect(graph.nodes.find(({ id }) => id === 'R-1')?.lines).toEqual(['Pork', 'lot H7', 'Holt']);
});

test('the start stands on both sides of a trace and once in the drawing', () => {
  expect(
    layOutTrace(withSuppliers, 960)
      .nodes.filter(({ isStart }) => isStart)
      .map(({ id }) => id),
  ).toEqual(['L-1']);
});

test('records that contradict themselves into a circle of rework are drawn all the same', () => {
  const circle: TraceGraph = {
    ...withSuppliers,
    links: [...withSuppliers.links, { from: 'L-2', to: 'L-1', grams: 1 }],
  };
  expect(layOutTrace(circle, 960).nodes).toHaveLength(withSuppliers.nodes.length);
});

test('no node lies on another, and all lie within the drawing', () => {
  const { nodes, nodeWidth, width, height } = layOutTrace(withSuppliers, 700);
  const overlaps = nodes.flatMap((a, i) => nodes.slice(i + 1).filter((b) => a.x === b.x && a.y < b.y + b.height && b.y < a.y + a.height));
  expect(overlaps).toEqual([]);
  expect(nodes.every(({ x, y, height: own }) => x >= 0 && x + nodeWidth <= width && y >= 0 && y + own <= height)).toBe(true);
});

test('every line leaves its source and reaches its target within their edges, and no two share an end', () => {
  const { nodes, nodeWidth, lines } = layOutTrace(withSuppliers, 960);
  const at = (id: string) => nodes.find((node) => node.id === id);
  expect(lines).toHaveLength(withSuppliers.links.length);
  for (const { link, x1, y1, x2, y2 } of lines) {
    const [from, to] = [at(link.from), at(link.to)];
    expect([x1, x2]).toEqual([(from?.x ?? NaN) + nodeWidth, to?.x]);
    expect(y1 > (from?.y ?? NaN) && y1 < (from?.y ?? NaN) + (from?.height ?? NaN)).toBe(true);
    expect(y2 > (to?.y ?? NaN) && y2 < (to?.y ?? NaN) + (to?.height ?? NaN)).toBe(true);
  }
  const ends = lines.map(({ x2, y2 }) => `${x2} ${y2}`);
  expect(new Set(ends).size).toBe(ends.length);
});

test('more columns than fit make the drawing wider, never its nodes narrower than their words', () => {
  const { width, nodeWidth } = layOutTrace(withSuppliers, 300);
  expect(nodeWidth).toBe(118);
  expect(width).toBeGreaterThan(300);
});

test('lines between two rows of partners do not cross and run level', () => {
  const lots = ['A', 'B', 'C'].map((id) => ({
    id,
    kind: 'lot' as const,
    title: id,
    lines: ['Sausage'],
    at: '2026-03-02',
  }));
  const packs = ['C', 'B', 'A'].map((id) => ({
    id: `${id}-P1`,
    kind: 'packing' as const,
    title: `${id}-P1`,
    lines: [],
    at: '2026-03-03',
  }));
  const links = lots.map(({ id }) => ({ from: id, to: `${id}-P1`, grams: 1000, count: 2 }));
  const { lines } = layOutTrace({ startId: 'A', nodes: [...lots, ...packs], links }, 600);
  for (const { y1, y2 } of lines) expect(Math.abs(y1 - y2)).toBeLessThan(1);
});
