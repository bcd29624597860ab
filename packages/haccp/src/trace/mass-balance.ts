import { decimalText } from '../quantity/decimal';
import { divide } from '../quantity/divide';

/** In femtograms. `packed` is still in the shop until shipped. */
export type Movements = {
  made: bigint;
  /** Into other lots. */
  used: bigint;
  /** Shipped or not. */
  packed: bigint;
  shipped: bigint;
  /** With a record: trim, waste, samples, process loss, condemned. */
  removed: bigint;
  /** By count, packed or not. */
  onHand: bigint;
};

/** More than went in is as much a fault as less. */
export const balanceFaults = ['below-zero', 'more-shipped-than-packed', 'unexplained', 'more-than-went-in'] as const;
export type BalanceFault = (typeof balanceFaults)[number];

export type MassBalance = Movements & {
  /** Positive when something is missing, negative when more came out than went in. */
  unexplained: bigint;
  /** Two decimals, rounded away from 100 %: "99.99", "100", "104.5". Absent when nothing was made. */
  percentAccounted?: string;
  fault?: BalanceFault;
};

/** made = used + shipped + removed + on hand + unexplained. */
export function massBalance(movements: Movements): MassBalance {
  const { made, used, shipped, removed, onHand } = movements;
  const accounted = used + shipped + removed + onHand;
  const unexplained = made - accounted;
  return {
    ...movements,
    unexplained,
    ...(made > 0n && { percentAccounted: percentOf(accounted, made) }),
    fault: faultOf(movements, unexplained),
  };
}

/** Rounding must not turn a difference into 100 %. */
const percentOf = (accounted: bigint, made: bigint): string =>
  decimalText(divide(accounted * 10_000n, made, accounted < made ? 'down' : 'up'), 2);

function faultOf({ packed, shipped, made }: Movements, unexplained: bigint): BalanceFault | undefined {
  if (made < 0n) return 'below-zero';
  if (shipped > packed) return 'more-shipped-than-packed';
  if (unexplained > 0n) return 'unexplained';
  if (unexplained < 0n) return 'more-than-went-in';
  return undefined;
}
