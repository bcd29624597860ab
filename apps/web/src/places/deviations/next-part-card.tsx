import type { Deviation } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Steps } from '../../ui/steps';
import { useSay } from '../../ui/voice';
import css from './deviations.module.css';
import { nextPart, whyNot, type Part } from './next-part';
import { leftToDecide } from './weights';

const parts = ['action', 'disposition', 'closing'] as const;

type NextPartProps = {
  deviation: Deviation;
  /** How much of it waits on this device: the next part is known once that is sent. */
  unsent: number;
  onDo: (part: Part) => void;
};

/** The card names who may do the next part where this person may not. */
export function NextPart({ deviation, unsent, onDo }: NextPartProps) {
  const say = useSay('deviations');
  const { roles } = useShop();
  const next = nextPart(deviation);
  const refusal = whyNot(next, roles);
  const { weight, all } = leftToDecide(deviation);
  const toDecide = all ? say('weight-of-to-decide', { weight, all }) : say('weight-to-decide', { weight });
  return (
    <div className={css.next}>
      <Steps
        label={say('what-it-needs')}
        steps={parts.map((part) => ({
          name: say(`part-${part}`),
          state: stateOf(part, next, deviation),
          note: part === 'disposition' && !deviation.covered ? toDecide : undefined,
        }))}
      />
      {unsent > 0 && <p>{say('unsent', { count: unsent })}</p>}
      {unsent === 0 &&
        next !== 'done' &&
        (refusal ? (
          <p>{say(refusal)}</p>
        ) : (
          <Button look="primary" onClick={() => onDo(next)}>
            {say(`do-${next}`)}
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
