/** Chance that comes again: the same seed gives the same cases on every machine (mulberry32, in the public domain). */
export type Chance = {
  /** From 0 up to 1. */
  part(): number;
  between(least: number, most: number): number;
  whole(least: number, most: number): number;
  oneOf<T>(some: readonly T[]): T;
  often(share: number): boolean;
};

export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  const part = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const between = (least: number, most: number) => least + part() * (most - least);
  const whole = (least: number, most: number) => Math.floor(between(least, most + 1));
  return {
    part,
    between,
    whole,
    oneOf: <T>(some: readonly T[]) => some[whole(0, some.length - 1)] as T,
    often: (share) => part() < share,
  };
}
