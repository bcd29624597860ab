/** A receipt into a lot, a lot into packages, packages to a customer. */
export type Link = { from: string; to: string };

export type Direction = 'forward' | 'backward';

/** The starts first, nearest before farther. */
export type Reach<Kind extends Link> = { nodes: string[]; links: Kind[] };

/** Membership is by reachability alone, never by quantity: a gram that cannot be told apart puts the whole node in. */
export function walk<Kind extends Link>(links: readonly Kind[], starts: readonly string[], direction: Direction): Reach<Kind> {
  const near = direction === 'forward' ? 'from' : 'to';
  const far = direction === 'forward' ? 'to' : 'from';
  const leaving = groupBy(links, near);
  const nodes = [...new Set(starts)];
  const seen = new Set(nodes);
  const walked: Kind[] = [];
  for (let i = 0; i < nodes.length; i += 1) {
    for (const link of leaving.get(nodes[i] as string) ?? []) {
      walked.push(link);
      if (seen.has(link[far])) continue;
      seen.add(link[far]);
      nodes.push(link[far]);
    }
  }
  return { nodes, links: walked };
}

function groupBy<Kind extends Link>(links: readonly Kind[], end: 'from' | 'to'): Map<string, Kind[]> {
  const groups = new Map<string, Kind[]>();
  for (const link of links) {
    const group = groups.get(link[end]);
    if (group) group.push(link);
    else groups.set(link[end], [link]);
  }
  return groups;
}
