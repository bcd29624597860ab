import type { Plan } from '@larderbook/contracts';
import { LinkButton } from '../../../ui/link-button';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { Sentences } from './sentences';

/** Why the plan in force should be looked at again; it stays in force until its owner adopts another. */
export function ReassessSection({ plan: { productId, inForce, reassess = [] } }: { plan: Plan }) {
  if (!inForce || reassess.length === 0) return null;
  const toLimits = (
    <LinkButton to="/products/$productId/limits" params={{ productId }}>Limits that apply</LinkButton>
  );
  return (
    <Section title="To be reassessed" aside={toLimits}>
      <Stack gap="near">
        <Status state="undetermined" word="Its figures stand otherwise elsewhere" margin="the plan has not changed" />
        <Sentences said={reassess} />
        <p>
          It stays in force as it was signed, and its lots are judged by it, until its owner adopts the next version.
        </p>
      </Stack>
    </Section>
  );
}
