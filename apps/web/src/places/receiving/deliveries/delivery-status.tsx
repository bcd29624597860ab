import type { Receipt } from '@larderbook/contracts';
import { Status } from '../../../ui/status';
import { useSay } from '../../../ui/voice';
import { useTell } from '../../../ui/use-tell';

/** A delivery accepted in spite of a miss says so. */
export function DeliveryStatus({ receipt: { decision, verdict, limit, voided }, size }: { receipt: Receipt; size?: 'line' | 'large' }) {
  const say = useSay('receiving');
  const { tell } = useTell();
  const margin = verdict && tell(verdict, limit).margin;
  if (voided) return <Status state="undetermined" word={say('voided')} size={size} />;
  if (decision === 'refused')
    return <Status state="missed" word={say('refused')} margin={verdict?.kind === 'met' ? undefined : margin} size={size} />;
  if (!verdict) return <Status state="met" word={say('accepted')} size={size} />;
  if (verdict.kind === 'met') return <Status state="met" word={say('accepted')} margin={margin} size={size} />;
  return <Status state={verdict.kind} margin={margin ? say('missed-but-accepted', { margin }) : say('yet-accepted')} size={size} />;
}
