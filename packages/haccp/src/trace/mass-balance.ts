import { decimalText } from '../quantity/decimal';
import { divide } from '../quantity/divide';
import { sayMass } from '../quantity/weigh';

/**
 * What the records say became of one delivery or lot, in femtograms. `packed` is told apart but is still in the shop
 * until shipped.
 */
export type Movements = {
  /** Received, or made. */
  made: bigint;
  /** Gone into other lots. */
  used: bigint;
  /** Put into packages, shipped or not. */
  packed: bigint;
  shipped: bigint;
  /** Taken out with a record: trim, waste, samples, process loss, condemned. */
  removed: bigint;
  /** Counted as still there, packed or not. */
  onHand: bigint;
};

export type MassBalance = Movements & {
  /**
   * Made less all that is accounted for: positive when something is missing, negative when more came out than went in.
   */
  unexplained: bigint;
  /** Exact to two decimals, rounded away from 100 %: "99.99", "100", "104.5". Absent when nothing was made. */
  percentAccounted?: string;
  /** What is wrong, in words. More than went in is as much a fault as less. */
  fault?: string;
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

function faultOf({ packed, shipped, made }: Movements, unexplained: bigint): string | undefined {
  if (made < 0n) return 'A weight is below zero.';
  if (shipped > packed) return `${sayMass(shipped - packed, 'kg', 3)} more was shipped than packed.`;
  if (unexplained > 0n) return `${sayMass(unexplained, 'kg', 3)} is not accounted for.`;
  if (unexplained < 0n) return `${sayMass(-unexplained, 'kg', 3)} more is accounted for than went in.`;
  return undefined;
}
