import type { ChillingBegan } from '../../limits/curve-context';

/** Answered at "Into the chiller" with these moments (epoch ms). */
export const chillingAt = (...moments: number[]): ChillingBegan => ({
  askedAt: 'Into the chiller',
  answers: moments.map((at) => ({ at })),
});
