import type { StageDrawn } from './drawing';
import type { Governed } from '../kinds/explainer';

/** Undecided and not ended, it still runs. */
export const kindDrawn = ({ verdict: { kind }, context: { ended } }: Governed): StageDrawn['kind'] =>
  kind === 'undetermined' && !ended ? 'running' : kind;
