import type { Plan } from '@larderbook/contracts';
import { LinkButton } from '../../../ui/link-button';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { Sentences } from './sentences';

/**
 * How the plan in force stands beside the edition in use and newer ones, and why it should be looked at again; it stays
 * in force until its owner adopts another.
 */
export function ReassessSection({ plan: { productId, inForce, reassess = [], elsewhere = [] } }: { plan: Plan }) {
  if (!inForce || reassess.length + elsewhere.length === 0) return null;
  const toLimits = (
    <LinkButton to="/products/$productId/limits" params={{ productId }}>
      Limits that apply
    </LinkButton>
  );
  return (
    <Section title={reassess.length > 0 ? 'To be reassessed' : 'Beside the edition in use'} aside={toLimits}>
      <Stack gap="near">
        {reassess.length > 0 && (
          <>
            <Status state="undetermined" word="Its figures are printed otherwise" margin="the plan has not changed" />
            <Sentences said={reassess} />
            <p>It stays in force as it was signed, and its lots are judged by it, until its owner adopts the next version.</p>
          </>
        )}
        <Sentences said={elsewhere} />
      </Stack>
    </Section>
  );
}
