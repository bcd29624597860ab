/** `reworked`: taken into another lot. */
export type ProductEvent = { kind: 'packed' | 'shipped' | 'condemned' | 'to-rework' | 'reworked'; mass: bigint };

/** In femtograms: packages that may not leave, and product to be reworked. */
export type SetAside = {
  /** In packages. */
  condemned: bigint;
  /** In packages, not yet taken. */
  toRework: bigint;
  /** Taken from packages as rework. */
  opened: bigint;
  /** Not yet taken, in packages or not. */
  pending: bigint;
};

/**
 * A decision names a weight: it is charged to the packages of its time, and none of them may leave in doubt. The rest
 * was loose.
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
