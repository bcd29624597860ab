import type { ChillingBegan } from '../../limits/curve-context';

/** Epoch ms. */
export const chillingAt = (...moments: number[]): ChillingBegan => ({
  askedAt: 'Into the chiller',
  answers: moments.map((at) => ({ at })),
});
