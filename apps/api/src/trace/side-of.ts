import type { TraceLink } from './links.queries';
import type { TraceNode } from './nodes.queries';

export const endsOf = (links: readonly TraceLink[]): string[] => links.flatMap(({ from, to }) => [from, to]);

export const idsOf = (nodes: readonly TraceNode[], kind: TraceNode['kind']): string[] =>
  nodes.filter((node) => node.kind === kind).map(({ id }) => id);

/** Includes the start, so that every link has both its ends. */
export function sideOf(startIds: readonly string[], links: readonly TraceLink[], described: ReadonlyMap<string, TraceNode>) {
  const ids = new Set([...startIds, ...endsOf(links)]);
  return {
    nodes: [...ids].flatMap((id) => described.get(id) ?? []).sort((a, b) => Date.parse(a.at) - Date.parse(b.at)),
    links: links.map(({ from, to, grams, count }) => ({ from, to, grams, count })),
  };
}
