import { Status } from '../../../ui/status';

type Stood = { inForce: boolean; adoptedAt?: string };

/** In force, superseded or not adopted, in a word with its shape. */
export function PlanStanding({ plan: { inForce, adoptedAt } }: { plan: Stood }) {
  if (inForce) return <Status state="met" word="In force" />;
  if (adoptedAt) return <Status state="undetermined" word="Superseded" />;
  return <Status state="undetermined" word="Not adopted" />;
}
