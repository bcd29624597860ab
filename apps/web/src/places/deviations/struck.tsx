import type { Voiding } from '@larderbook/contracts';
import { By } from './by';

/** How it came that something counts no more: why, by whom and when. */
export function Struck({ how, reason, by, at }: Voiding) {
  return (
    <p>
      <strong>
        {how.charAt(0).toUpperCase()}
        {how.slice(1)}:
      </strong>{' '}
      {reason} <By name={by} at={at} />
    </p>
  );
}
