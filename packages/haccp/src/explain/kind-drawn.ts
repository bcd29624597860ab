import type { StageDrawn } from './drawing';
import type { Governed } from '../kinds/explainer';

export const kindDrawn = ({ verdict: { kind }, context: { ended } }: Governed): StageDrawn['kind'] =>
  kind === 'undetermined' && !ended ? 'running' : kind;
