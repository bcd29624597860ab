import type { StageDrawn } from './drawing';
import type { Governed } from '../kinds/explainer';

/** What a stretch of time stands for that has no verdict of its own: while nothing is decided and it goes on, it runs. */
export const kindDrawn = ({ verdict: { kind }, context: { ended } }: Governed): StageDrawn['kind'] =>
  kind === 'undetermined' && !ended ? 'running' : kind;
