import { Caution } from '../../../ui/caution';
import { useSay } from '../../../ui/voice';

/** Said wherever a plan is read or written. */
export function PlanCaution() {
  const say = useSay('plans');
  return (
    <Caution>
      <p>{say('caution')}</p>
    </Caution>
  );
}
