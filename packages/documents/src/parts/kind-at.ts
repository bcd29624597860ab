import type { SayOnPaper } from '../page/telling';

export function kindAt({ critical, step }: { critical: boolean; step?: string }, say: SayOnPaper): string {
  if (step) return say(critical ? 'critical-at' : 'prerequisite-at', { step });
  return say(critical ? 'critical-control-point' : 'prerequisite');
}
