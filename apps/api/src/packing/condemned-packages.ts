/** What happened to the packages of a lot, in the order in which it was recorded. */
export type PackageEvent = { kind: 'packed' | 'shipped' | 'condemned'; mass: bigint };

/**
 * How much of what was condemned was in packages, in femtograms. A disposition names a weight, not packages, so it is
 * charged to the packages that were there when it was made: none of them may leave as long as that is in doubt.
 */
export function condemnedPackages(events: readonly PackageEvent[]): bigint {
  let there = 0n;
  let condemned = 0n;
  for (const { kind, mass } of events) {
    if (kind === 'packed') there += mass;
    if (kind === 'shipped') there -= mass;
    if (kind !== 'condemned') continue;
    const charged = mass < there ? mass : there;
    there -= charged;
    condemned += charged;
  }
  return condemned;
}
