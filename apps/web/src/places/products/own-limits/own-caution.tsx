import { Caution } from '../../../ui/caution';
import { useSay } from '../../../ui/voice';

/** Said wherever limits of one's own are written. */
export function OwnCaution() {
  const say = useSay('own-limits');
  return (
    <Caution>
      <p>{say('caution')}</p>
    </Caution>
  );
}
