import type { Plan } from '@larderbook/contracts';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { Sentences } from './sentences';
import { useSay } from '../../../ui/voice';

export function WhatKeeps({ plan: { adoptedAt, incomplete, warnings } }: { plan: Plan }) {
  const say = useSay('plans');
  const isOpen = !adoptedAt;
  if (!isOpen || incomplete.length + warnings.length === 0) return null;
  return (
    <Section title={say('before-signing')}>
      <Stack gap="near">
        {incomplete.length > 0 && <Status state="missed" word={say('keeps-from-adoption')} />}
        <Sentences said={incomplete} />
        {warnings.length > 0 && <Status state="undetermined" word={say('know-before')} />}
        <Sentences said={warnings} />
      </Stack>
    </Section>
  );
}
