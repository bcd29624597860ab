import type { ReactNode } from 'react';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';

type CalculatorsFrameProps = { title: string; under?: ReactNode; actions?: ReactNode; children: ReactNode };

export function CalculatorsFrame({ title, under, actions, children }: CalculatorsFrameProps) {
  const say = useSay('calculators');
  const pages = [
    { to: '/calculators', name: say('calculators') },
    { to: '/calculators/limits', name: say('published-limits') },
    { to: '/calculators/own-limits', name: say('own-limits') },
  ];
  return (
    <Stack>
      {' '}
      <PageTabs label={say('calculators')} pages={pages} />
      <PageHeader title={title} under={under} actions={actions} />
      {children}
    </Stack>
  );
}
