import { percentile } from '../load/percentile';

const warmUps = 2;

/** Milliseconds, of several rounds the one in the middle. */
export async function medianTimeOf(rounds: number, work: () => unknown): Promise<number> {
  for (let round = 0; round < warmUps; round++) await work();
  const took: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const began = performance.now();
    await work();
    took.push(performance.now() - began);
  }
  return percentile(took, 0.5);
}
