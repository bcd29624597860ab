/** What happened to the product of a lot, in the order in which it was recorded. `reworked`: taken into another lot. */
export type ProductEvent = { kind: 'packed' | 'shipped' | 'condemned' | 'to-rework' | 'reworked'; mass: bigint };

/** What of a lot's packages may not leave, in femtograms, and what is still to be reworked. */
export type SetAside = {
  /** Condemned in packages. */
  condemned: bigint;
  /** In packages, decided to be reworked and not yet taken. */
  toRework: bigint;
  /** Taken out of packages as rework. */
  opened: bigint;
  /** Decided to be reworked and not yet taken, in packages or not. */
  pending: bigint;
};

/**
 * A decision names a weight, not packages, so it is charged to the packages that were there when it was made: none of
 * them may leave as long as that is in doubt. What is beyond them was loose.
 */
export function setAside(events: readonly ProductEvent[]): SetAside {
  let there = 0n;
  const aside: SetAside = { condemned: 0n, toRework: 0n, opened: 0n, pending: 0n };
  const charge = (mass: bigint): bigint => {
    const charged = least(mass, there);
    there -= charged;
    return charged;
  };
  for (const { kind, mass } of events) {
    if (kind === 'packed') there += mass;
    if (kind === 'shipped') charge(mass);
    if (kind === 'condemned') aside.condemned += charge(mass);
    if (kind === 'to-rework') {
      aside.pending += mass;
      aside.toRework += charge(mass);
    }
    if (kind === 'reworked') {
      const taken = least(mass, aside.pending);
      const opened = least(taken, aside.toRework);
      aside.pending -= taken;
      aside.toRework -= opened;
      aside.opened += opened;
    }
  }
  return aside;
}

const least = (a: bigint, b: bigint): bigint => (a < b ? a : b);
