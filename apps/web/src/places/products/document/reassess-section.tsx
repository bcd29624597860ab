import type { Plan } from '@larderbook/contracts';
import { LinkButton } from '../../../ui/link-button';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { Sentences } from './sentences';
import { useSay } from '../../../ui/voice';

/** The plan stays in force until its owner adopts another. */
export function ReassessSection({ plan: { productId, inForce, reassess = [], elsewhere = [] } }: { plan: Plan }) {
  const say = useSay('plans');
  if (!inForce || reassess.length + elsewhere.length === 0) return null;
  const toLimits = (
    <LinkButton to="/products/$productId/limits" params={{ productId }}>
      {say('limits-that-apply')}
    </LinkButton>
  );
  return (
    <Section title={say(reassess.length > 0 ? 'to-be-reassessed' : 'beside-the-edition')} aside={toLimits}>
      <Stack gap="near">
        {reassess.length > 0 && (
          <>
            <Status state="undetermined" word={say('printed-otherwise')} margin={say('plan-unchanged')} />
            <Sentences said={reassess} />
            <p>{say('stays-in-force')}</p>
          </>
        )}
        <Sentences said={elsewhere} />
      </Stack>
    </Section>
  );
}
