import type { Voiding } from '@larderbook/contracts';
import { useSay } from '../../ui/voice';
import { By } from './by';

export function Struck({ how, reason, by, at }: Voiding) {
  const say = useSay('deviations');
  return (
    <p>
      <strong>{say(how === 'taken back' ? 'taken-back' : how)}</strong> {reason} <By name={by} at={at} />
    </p>
  );
}
