import type { LimitThatApplies, ProductLimits } from '@larderbook/contracts';
import type { State } from '../../../ui/status';

type Said = { state: State; word: string; margin?: string };

/** What the plan does about a limit. Only the very figure counts as judged; nothing here is a verdict on a lot. */
export function sayInPlan({ kind, at, from }: LimitThatApplies['inPlan'], plan: ProductLimits['plan']): Said | undefined {
  const where = `at ${at.join(', ')}`;
  const named = plan && (plan.inForce ? `plan ${plan.version}` : `plan ${plan.version}, not adopted`);
  switch (kind) {
    case 'this figure':
      return { state: 'met', word: `Judged in ${named}`, margin: where };
    case 'another figure':
      return {
        state: 'undetermined',
        word: `Judged by another figure in ${named}`,
        margin: `${where}, from ${from.join('; ')}`,
      };
    case 'nothing':
      return { state: 'undetermined', word: `Not judged in ${named}` };
    case 'not at a step':
      return {
        state: 'undetermined',
        word: 'Not judged at a step',
        margin: 'show it by your formula, label or analysis',
      };
    case 'no plan':
      return undefined;
  }
}
