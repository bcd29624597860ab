import { Status } from '../../../ui/status';
import { useSay } from '../../../ui/voice';

type Stood = { inForce: boolean; adoptedAt?: string };

export function PlanStanding({ plan: { inForce, adoptedAt } }: { plan: Stood }) {
  const say = useSay('plans');
  if (inForce) return <Status state="met" word={say('in-force')} />;
  if (adoptedAt) return <Status state="undetermined" word={say('superseded')} />;
  return <Status state="undetermined" word={say('not-adopted')} />;
}
