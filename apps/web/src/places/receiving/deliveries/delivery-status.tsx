import type { Receipt } from '@larderbook/contracts';
import { Status } from '../../../ui/status';

/** Refused, or how its temperature was judged; one accepted in spite of a miss says so. */
export function DeliveryStatus({ receipt: { decision, verdict }, size }: { receipt: Receipt; size?: 'line' | 'large' }) {
  if (decision === 'refused') return <Status state="missed" word="Refused" margin={verdict?.kind === 'met' ? undefined : verdict?.margin} size={size} />;
  if (!verdict) return <Status state="met" word="Accepted" size={size} />;
  if (verdict.kind === 'met') return <Status state="met" word="Accepted" margin={verdict.margin} size={size} />;
  return <Status state={verdict.kind} margin={[verdict.margin, 'accepted'].filter(Boolean).join('; ')} size={size} />;
}
