import type { Plan } from '@larderbook/contracts';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { Sentences } from './sentences';

/** What keeps a plan from being adopted, and what its owner should know before signing it. */
export function WhatKeeps({ plan: { adoptedAt, incomplete, warnings } }: { plan: Plan }) {
  const isOpen = !adoptedAt;
  if (!isOpen || incomplete.length + warnings.length === 0) return null;
  return (
    <Section title="Before it is signed">
      <Stack gap="near">
        {incomplete.length > 0 && <Status state="missed" word="This keeps it from being adopted" />}
        <Sentences said={incomplete} />
        {warnings.length > 0 && <Status state="undetermined" word="Know this before you sign" />}
        <Sentences said={warnings} />
      </Stack>
    </Section>
  );
}
