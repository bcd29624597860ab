import type { Deviation } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Steps } from '../../ui/steps';
import css from './deviations.module.css';
import { nextPart, partWords, whyNot, type Part } from './next-part';
import { sayLeftToDecide } from './weights';

const actionOf: Record<Exclude<Part, 'done'>, string> = {
  action: 'Record the corrective action',
  disposition: 'Decide',
  closing: 'Close the deviation',
};
const parts = ['action', 'disposition', 'closing'] as const;

/** Where the deviation is on its way to being closed, and the one thing to do next, or who may do it. */
export function NextPart({ deviation, onDo }: { deviation: Deviation; onDo: (part: Part) => void }) {
  const { roles } = useShop();
  const next = nextPart(deviation);
  const refusal = whyNot(next, roles);
  return (
    <div className={css.next}>
      <Steps
        label="What a deviation needs"
        steps={parts.map((part) => ({
          name: partWords[part],
          state: stateOf(part, next, deviation),
          note: part === 'disposition' && !deviation.covered ? `${sayLeftToDecide(deviation)} to decide` : undefined,
        }))}
      />
      {next !== 'done' &&
        (refusal ? (
          <p>{refusal}</p>
        ) : (
          <Button look="primary" onClick={() => onDo(next)}>
            {actionOf[next]}
          </Button>
        ))}
    </div>
  );
}

function stateOf(part: Exclude<Part, 'done'>, next: Part, { actions, covered }: Deviation) {
  if (part === next) return 'now' as const;
  const isDone = next === 'done' || (part === 'action' && actions.length > 0) || (part === 'disposition' && covered);
  return isDone ? ('done' as const) : ('to come' as const);
}
