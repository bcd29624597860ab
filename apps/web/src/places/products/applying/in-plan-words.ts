import type { LimitThatApplies, ProductLimits } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';
import type { State } from '../../../ui/status';

type Said = { state: State; word: string; margin?: string };
type InPlan = LimitThatApplies['inPlan'];

/** Only the very figure counts as judged; nothing here is a verdict on a lot. */
export function inPlanWords({ kind, at, from }: InPlan, plan: ProductLimits['plan'], say: SayOf<'product-limits'>): Said | undefined {
  if (kind === 'not at a step') return { state: 'undetermined', word: say('no-step'), margin: say('show-it-by') };
  if (kind === 'no plan' || !plan) return undefined;
  const { version, inForce } = plan;
  const points = at.join(', ');
  switch (kind) {
    case 'this figure':
      return { state: 'met', word: say(inForce ? 'judged-in' : 'judged-in-draft', { version }), margin: say('at-points', { points }) };
    case 'another figure':
      return {
        state: 'undetermined',
        word: say(inForce ? 'otherwise-in' : 'otherwise-in-draft', { version }),
        margin: say('at-points-from', { points, sources: from.join('; ') }),
      };
    case 'nothing':
      return { state: 'undetermined', word: say(inForce ? 'unjudged-in' : 'unjudged-in-draft', { version }) };
  }
}
