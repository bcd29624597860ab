import type { Verdict } from './verdict';

/** Nothing is ever met against a limit that contradicts itself. */
export const unusableLimit = (fault: string): Pick<Verdict, 'kind' | 'measured' | 'because' | 'next'> => ({
  kind: 'undetermined',
  measured: 'not judged',
  because: fault,
  next: 'Correct the limit in the plan.',
});
