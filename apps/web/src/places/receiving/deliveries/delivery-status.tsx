import type { Receipt } from '@larderbook/contracts';
import { Status } from '../../../ui/status';

/** Refused, or how its temperature was judged; one accepted in spite of a miss says so. */
export function DeliveryStatus({ receipt: { decision, verdict, voided }, size }: { receipt: Receipt; size?: 'line' | 'large' }) {
  if (voided) return <Status state="undetermined" word="Voided" size={size} />;
  if (decision === 'refused')
    return <Status state="missed" word="Refused" margin={verdict?.kind === 'met' ? undefined : verdict?.margin} size={size} />;
  if (!verdict) return <Status state="met" word="Accepted" size={size} />;
  if (verdict.kind === 'met') return <Status state="met" word="Accepted" margin={verdict.margin} size={size} />;
  return <Status state={verdict.kind} margin={[verdict.margin, 'accepted'].filter(Boolean).join('; ')} size={size} />;
}
