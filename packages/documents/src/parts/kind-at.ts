import type { SayOnPaper } from '../page/telling';

/** What a control point is, and at which step. */
export function kindAt({ critical, step }: { critical: boolean; step?: string }, say: SayOnPaper): string {
  if (step) return say(critical ? 'critical-at' : 'prerequisite-at', { step });
  return say(critical ? 'critical-control-point' : 'prerequisite');
}
