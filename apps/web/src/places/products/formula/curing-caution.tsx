import { Caution } from '../../../ui/caution';
import { useSay } from '../../../ui/voice';

/** Said wherever a curing ingredient is written, weighed or worked out. */
export function CuringCaution() {
  const say = useSay('formulas');
  return (
    <Caution>
      <p>{say('curing-caution')}</p>
    </Caution>
  );
}
