import { Link } from '@tanstack/react-router';
import { useSay } from '../../../ui/voice';

export function BackToDraft({ productId }: { productId: string }) {
  const say = useSay('plan-drafts');
  return (
    <Link to="/products/$productId/plan" params={{ productId }}>
      {say('being-written')}
    </Link>
  );
}
